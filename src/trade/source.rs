//! Where a figure comes from and how sure that is; shown as the "source" line beside a reading.

use std::borrow::Cow;

use serde::{Deserialize, Serialize};

/// How far a figure can be trusted.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Sureness {
    /// Stands in a published source that is named.
    Published,
    /// What restorers do or find; nobody publishes it.
    CommonPractice,
    /// Remembered, not looked up: check before relying on it.
    Memory,
}

impl Sureness {
    /// In words.
    pub fn said(self) -> &'static str {
        match self {
            Self::Published => crate::text!("published"),
            Self::CommonPractice => crate::text!("common practice, no source"),
            Self::Memory => crate::text!("from memory, not verified"),
        }
    }
}

/// A named source of a figure.
#[derive(Clone, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub struct Source {
    /// The title, with page or table where known; for practice and memory, what it rests on (may be empty).
    pub text: Cow<'static, str>,
    /// How sure it is.
    pub sureness: Sureness,
}

impl Source {
    /// A published source: title, edition, page or table.
    pub const fn published(text: &'static str) -> Self {
        Self { text: Cow::Borrowed(text), sureness: Sureness::Published }
    }

    /// What restorers do; `text` says where it shows, and may be empty.
    pub const fn practice(text: &'static str) -> Self {
        Self { text: Cow::Borrowed(text), sureness: Sureness::CommonPractice }
    }

    /// A figure from memory; `text` names the publication it is believed to stand in, and may be empty.
    pub const fn memory(text: &'static str) -> Self {
        Self { text: Cow::Borrowed(text), sureness: Sureness::Memory }
    }

    /// The line shown to a person: the title alone when published, else the title and how sure it is.
    pub fn said(&self) -> String {
        let title = crate::text::say(&self.text);
        match self.sureness {
            Sureness::Published => title.to_owned(),
            sureness if title.is_empty() => sureness.said().to_owned(),
            sureness => format!("{title} ({})", sureness.said()),
        }
    }
}
