//! Closed lists of words (states, kinds, choices) that are stored and exchanged by name.

/// A closed list of words: its stored names and its labels for a person.
pub trait Word: Copy + Eq + Sized + 'static {
    /// Every word of the list, in the order a person meets them.
    const ALL: &'static [Self];

    /// The stored name, in snake case; never changes.
    fn name(self) -> &'static str;

    /// The label for a person, in the reader's language.
    fn label(self) -> &'static str;

    /// The word of a stored name.
    fn named(name: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|word| word.name() == name)
    }
}

/// Declares a closed list of words: `words! { /// doc  Custody { Mine = "mine", "Mine"; … } }`.
#[macro_export]
macro_rules! words {
    ($(#[$doc:meta])* $list:ident { $($(#[$word_doc:meta])* $word:ident = $name:literal, $label:literal;)+ }) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, serde::Serialize, serde::Deserialize)]
        pub enum $list {
            $($(#[$word_doc])* #[serde(rename = $name)] $word,)+
        }

        impl $crate::record::Word for $list {
            const ALL: &'static [Self] = &[$(Self::$word,)+];

            fn name(self) -> &'static str {
                match self { $(Self::$word => $name,)+ }
            }

            fn label(self) -> &'static str {
                match self { $(Self::$word => $crate::text!($label),)+ }
            }
        }
    };
}
