//! Errors as Python exceptions; the classes are in `hubwright.errors`.

use pyo3::PyErr;

use crate::error::{Error, ErrorKind};

mod classes {
    pyo3::import_exception!(hubwright.errors, HubwrightError);
    pyo3::import_exception!(hubwright.errors, OutOfRangeError);
    pyo3::import_exception!(hubwright.errors, UnitError);
    pyo3::import_exception!(hubwright.errors, TextError);
    pyo3::import_exception!(hubwright.errors, MissingError);
    pyo3::import_exception!(hubwright.errors, TableError);
    pyo3::import_exception!(hubwright.errors, FileError);
}

impl From<Error> for PyErr {
    fn from(error: Error) -> Self {
        let arguments = (error.to_string(), error.code());
        match error.kind() {
            ErrorKind::NotFinite { .. } | ErrorKind::OutOfRange { .. } => {
                classes::OutOfRangeError::new_err(arguments)
            }
            ErrorKind::NoUnit { .. } | ErrorKind::WrongUnit { .. } => {
                classes::UnitError::new_err(arguments)
            }
            ErrorKind::NotAQuantity { .. } | ErrorKind::UnknownWord { .. } => {
                classes::TextError::new_err(arguments)
            }
            ErrorKind::Missing { .. } => classes::MissingError::new_err(arguments),
            ErrorKind::UnlikeLengths { .. }
            | ErrorKind::BadHeading { .. }
            | ErrorKind::BadRow { .. }
            | ErrorKind::BadTable { .. }
            | ErrorKind::TooLarge { .. } => classes::TableError::new_err(arguments),
            ErrorKind::File { .. } => classes::FileError::new_err(arguments),
            ErrorKind::Stopped { .. } => classes::HubwrightError::new_err(arguments),
        }
    }
}
