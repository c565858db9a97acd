use crate::Table; pub fn tables() -> Vec<Table> { vec![] }
