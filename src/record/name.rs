//! Names of the tables' rows as records carry them, each kept once however many records say it.

use std::borrow::Cow;
use std::collections::HashSet;
use std::fmt;
use std::hash::{Hash, Hasher};
use std::ops::Deref;
use std::sync::{LazyLock, Mutex, PoisonError};

use serde::{Deserialize, Deserializer, Serialize, Serializer};

/// The name of a question, an answer or a finding in the tables; empty for none.
///
/// A large logbook says the same few hundred names hundreds of thousands of times. What is kept is never given back:
/// no field that a person types into carries a name.
/// Two names are the same where they are kept at the same place, so that comparing them reads no text.
#[derive(Clone, Copy, Default, PartialOrd, Ord)]
pub struct Name(&'static str);

impl PartialEq for Name {
    fn eq(&self, other: &Self) -> bool {
        self.0.len() == other.0.len() && (self.0.is_empty() || std::ptr::eq(self.0, other.0))
    }
}

impl Eq for Name {}

impl Hash for Name {
    fn hash<H: Hasher>(&self, hasher: &mut H) {
        self.0.hash(hasher);
    }
}

static KEPT: LazyLock<Mutex<HashSet<&'static str>>> = LazyLock::new(Mutex::default);

impl Name {
    /// The name itself.
    pub const fn as_str(self) -> &'static str {
        self.0
    }
}

impl From<&str> for Name {
    fn from(text: &str) -> Self {
        if text.is_empty() {
            return Self("");
        }
        let mut kept = KEPT.lock().unwrap_or_else(PoisonError::into_inner);
        if let Some(known) = kept.get(text) {
            return Self(known);
        }
        let new: &'static str = Box::leak(text.into());
        kept.insert(new);
        Self(new)
    }
}

impl From<&String> for Name {
    fn from(text: &String) -> Self {
        Self::from(text.as_str())
    }
}

impl Deref for Name {
    type Target = str;

    fn deref(&self) -> &str {
        self.0
    }
}

impl PartialEq<str> for Name {
    fn eq(&self, text: &str) -> bool {
        self.0 == text
    }
}

impl PartialEq<&str> for Name {
    fn eq(&self, text: &&str) -> bool {
        self.0 == *text
    }
}

impl PartialEq<String> for Name {
    fn eq(&self, text: &String) -> bool {
        self.0 == text
    }
}

impl PartialEq<Name> for String {
    fn eq(&self, name: &Name) -> bool {
        self == name.0
    }
}

impl fmt::Debug for Name {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        fmt::Debug::fmt(self.0, f)
    }
}

impl fmt::Display for Name {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.0)
    }
}

impl Serialize for Name {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(self.0)
    }
}

/// A text that is borrowed where the document lets it be, so that a known name needs no room at all.
#[derive(Deserialize)]
struct Said<'a>(#[serde(borrow)] Cow<'a, str>);

impl<'de> Deserialize<'de> for Name {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        Said::deserialize(deserializer).map(|Said(text)| Self::from(&*text))
    }
}
