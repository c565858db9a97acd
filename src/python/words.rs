//! Words on their way across: text in, members of `hubwright.words` out.

use pyo3::prelude::*;
use pyo3::sync::PyOnceLock;
use pyo3::types::PyModule;

#[cfg(feature = "stubs")]
use pyo3::{inspect::PyStaticExpr, type_hint_identifier};

use crate::error::{Error, ErrorKind, cut};
use crate::gauge::{
    Along, FlankBow, GuardBand, LargeEnd, NamingOutcome, Ruling, SetAngle, Spread, TaperPart,
    Toward,
};
use crate::joint::{
    Carries, CutIn, Feature, Filler, FitBasis, FitKind, GapOutcome, KeyFit, KeyStandard, Metal,
    MoveTool, Print, SizeOutcome,
};
use crate::mounting::{Law, MarkingSays, Material, Outcome, Rotation, ThreadHand, YesNo};
use crate::units::Words;
use crate::wheel::holding::{Answer, NutLock, Running};
use crate::wheel::{
    Abrasive, BlotterNeed, Bond, Fastening, FlangeKind, GrindKind, MachineKind, Restriction, Shape,
};

/// A list of words that has a class in `hubwright.words`.
pub(super) trait Named: Words {
    /// Name of the class.
    const CLASS: &'static str;
}

macro_rules! named {
    ($($kind:ident),+) => {
        $(impl Named for $kind { const CLASS: &'static str = stringify!($kind); })+

        /// The words of every class of `hubwright.words`, as the compiled part knows them.
        #[pyfunction]
        pub fn word_lists() -> Vec<(&'static str, Vec<&'static str>)> {
            vec![$((<$kind as Named>::CLASS, <$kind as Words>::LIST.iter().map(|(_, word, _)| *word).collect())),+]
        }
    };
}
named!(
    Outcome,
    Law,
    YesNo,
    Rotation,
    ThreadHand,
    Material,
    Shape,
    Fastening,
    Abrasive,
    Bond,
    MachineKind,
    FlangeKind,
    BlotterNeed,
    MarkingSays,
    Restriction,
    Feature,
    FitKind,
    FitBasis,
    SizeOutcome,
    Metal,
    KeyStandard,
    KeyFit,
    CutIn,
    MoveTool,
    Filler,
    GapOutcome,
    Carries,
    Print,
    LargeEnd,
    FlankBow,
    NamingOutcome,
    Along,
    SetAngle,
    TaperPart,
    Toward,
    GuardBand,
    Ruling,
    Spread,
    GrindKind,
    Running,
    Answer,
    NutLock
);

/// Reads a word.
pub(super) fn word<K: Words>(object: &Bound<'_, PyAny>) -> Result<K, Error> {
    if let Ok(truth) = object.extract::<bool>() {
        return K::read_word(if truth { "yes" } else { "no" });
    }
    match object.extract::<String>() {
        Ok(text) => K::read_word(&text),
        Err(_) => {
            let given = object
                .repr()
                .map_or_else(|_| "an object".to_owned(), |repr| cut(&repr.to_string()));
            let words: Vec<_> = K::LIST.iter().map(|(_, word, _)| *word).collect();
            Err(ErrorKind::UnknownWord {
                argument: K::NAME.into(),
                text: given,
                allowed: words.join(", "),
                hint: format!("give one of these words as text, like \"{}\"", words[0]),
            }
            .into())
        }
    }
}

/// One word: read, or why it could not be.
pub(super) struct W<K>(pub Result<K, Error>);

impl<K> W<K> {
    /// The word, or an exception that names the argument.
    pub(super) fn named(self, argument: &str) -> Result<K, Error> {
        self.0.map_err(|error| error.named(argument))
    }
}

impl<'py, K: Named> FromPyObject<'_, 'py> for W<K> {
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const INPUT_TYPE: PyStaticExpr = type_hint_identifier!("builtins", "str");

    fn extract(object: Borrowed<'_, 'py, PyAny>) -> PyResult<Self> {
        Ok(Self(word(&object)))
    }
}

/// A member of its class in `hubwright.words`.
pub(super) fn member<'py, K: Named>(py: Python<'py>, word: K) -> PyResult<Bound<'py, PyAny>> {
    static MODULE: PyOnceLock<Py<PyModule>> = PyOnceLock::new();
    let module = MODULE
        .get_or_try_init(py, || PyModule::import(py, "hubwright.words").map(Bound::unbind))?;
    module.bind(py).getattr(K::CLASS)?.call1((word.word(),))
}

/// A word on its way out.
pub(super) struct WordOut<K>(pub K);

impl<'py, K: Named> IntoPyObject<'py> for WordOut<K> {
    type Target = PyAny;
    type Output = Bound<'py, PyAny>;
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const OUTPUT_TYPE: PyStaticExpr = type_hint_identifier!("hubwright.words", K::CLASS);

    fn into_pyobject(self, py: Python<'py>) -> PyResult<Self::Output> {
        member(py, self.0)
    }
}

/// Laws: a list of words, or one text with commas as on the command line.
pub(super) struct Laws(pub Vec<Law>);

impl<'py> FromPyObject<'_, 'py> for Laws {
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const INPUT_TYPE: PyStaticExpr = type_hint_identifier!("hubwright._typing", "Names");

    fn extract(object: Borrowed<'_, 'py, PyAny>) -> PyResult<Self> {
        let laws: Vec<Law> = names(&object, "laws")?
            .iter()
            .map(|name| Law::read_word(name).map_err(|error| error.named("laws")))
            .collect::<Result<_, _>>()?;
        Ok(Self(laws))
    }
}

/// Slugs of rules, likewise.
pub(super) struct Slugs(pub Vec<String>);

impl<'py> FromPyObject<'_, 'py> for Slugs {
    type Error = PyErr;
    #[cfg(feature = "stubs")]
    const INPUT_TYPE: PyStaticExpr = type_hint_identifier!("hubwright._typing", "Names");

    fn extract(object: Borrowed<'_, 'py, PyAny>) -> PyResult<Self> {
        Ok(Self(names(&object, "without")?))
    }
}

fn names(object: &Bound<'_, PyAny>, argument: &str) -> Result<Vec<String>, Error> {
    if let Ok(text) = object.extract::<String>() {
        return Ok(text.split(',').map(|name| name.trim().to_owned()).collect());
    }
    object.extract::<Vec<String>>().map_err(|_| {
        let given =
            object.repr().map_or_else(|_| "an object".to_owned(), |repr| cut(&repr.to_string()));
        ErrorKind::UnknownWord {
            argument: argument.into(),
            text: given,
            allowed: "a list of names, or one text with commas".into(),
            hint: format!("give {argument}=[\"...\"]"),
        }
        .into()
    })
}
