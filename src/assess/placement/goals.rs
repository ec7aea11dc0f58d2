//! What matters to the restorer, as sliders, and the terms of which a choice's worth is made.

use crate::assess::making::TrueTo;
use crate::record::{Originality, Standing, Word as _};
use crate::{counted, text};

/// How far a slider goes.
pub const MOST: u32 = 10;

macro_rules! goals {
    ($($field:ident = $name:literal, $label:literal, $usual:literal;)+) => {
        /// How much each goal matters, from 0 (not at all) to [`MOST`].
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
        pub struct Goals {
            $(pub $field: u32,)+
            /// Which machines can be ready soonest: complete machines and little work before all else.
            pub soonest: bool,
        }

        impl Default for Goals {
            fn default() -> Self {
                Self { $($field: $usual,)+ soonest: false }
            }
        }

        impl Goals {
            /// The sliders: name, what it is called, how far it stands.
            pub fn sliders(&self) -> Vec<(&'static str, &'static str, u32)> {
                vec![$(($name, text!($label), self.$field),)+]
            }

            /// Sets a slider by its name, at most to [`MOST`]; whether there is such a slider.
            pub fn set(&mut self, name: &str, to: u32) -> bool {
                match name {
                    $($name => self.$field = to.min(MOST),)+
                    _ => return false,
                }
                true
            }
        }
    };
}

goals! {
    fill = "fill", "Fill the required roles", 5;
    optional = "optional", "Fill the optional roles", 5;
    dates = "dates", "Keep to the windows of dates", 5;
    brief = "brief", "Match the brief: modest, typical, best", 5;
    proven = "proven", "Prefer what is proven", 5;
    work = "work", "Least work", 5;
    original = "original", "Originality", 5;
    stay = "stay", "Keep machines together as they are", 5;
    urgent = "urgent", "Urgent machines first", 5;
}

/// One ground for or against a choice.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Term {
    Required,
    Optional,
    Urgent {
        priority: u32,
    },
    Dates(TrueTo),
    /// How good it is among its like, in hundredths, for a brief.
    Brief {
        standing: Standing,
        rank: u32,
    },
    Proven,
    Sound,
    NotSurveyed,
    Work {
        minutes: u32,
    },
    Originality(Originality),
    Fitted,
    Planned,
    /// It is fitted there, and need not be taken out.
    StaysIn {
        minutes: u32,
    },
    ToFit {
        minutes: u32,
    },
    /// Tests of the whole machine hold today, and count no longer.
    Voids {
        minutes: u32,
    },
    ConnectorsUnknown,
    Between,
}

impl Goals {
    /// What a term is worth: whole numbers, all of them far below [`MOST_WORTH`](super::question::MOST_WORTH).
    pub fn worth(&self, term: Term) -> i64 {
        let by = i64::from;
        match term {
            Term::Required => 200 * by(self.fill),
            Term::Optional => 30 * by(self.optional),
            Term::Urgent { priority } => 2 * by(10_u32.saturating_sub(priority)) * by(self.urgent),
            Term::Dates(TrueTo::Comfortable) => 12 * by(self.dates),
            Term::Dates(TrueTo::ByDesign { .. }) => 6 * by(self.dates),
            // Four points a week with the slider in the middle; fifty years apart are apart enough.
            Term::Dates(TrueTo::Apart { weeks }) => -weeks.abs().min(2600) * 4 * by(self.dates) / 5,
            Term::Dates(TrueTo::NotKnown | TrueTo::Conflict) => -8 * by(self.dates),
            Term::Brief { standing, rank } => {
                let aim = match standing {
                    Standing::Modest => 20,
                    Standing::Typical => 50,
                    Standing::Best => 100,
                };
                -(by(rank) - aim).abs() * 8 * by(self.brief) / 100
            }
            Term::Proven => 6 * by(self.proven),
            Term::Sound => 3 * by(self.proven),
            Term::NotSurveyed => -3 * by(self.proven),
            Term::Work { minutes } | Term::ToFit { minutes } | Term::Voids { minutes } => -self.minutes(minutes),
            Term::StaysIn { minutes } => self.minutes(minutes),
            Term::Originality(originality) => {
                by(self.original)
                    * match originality {
                        Originality::Original => 2,
                        Originality::PeriodReplacement => 1,
                        Originality::Unstated => 0,
                        Originality::Altered => -1,
                        Originality::ModernReplacement => -2,
                    }
            }
            // Where nothing else is between two parts, the one that is there stays.
            Term::Fitted => (40 * by(self.stay)).max(2),
            Term::Planned => (5 * by(self.stay)).max(1),
            Term::ConnectorsUnknown => -80,
            Term::Between => -5,
        }
    }

    /// What so much time at the bench weighs: two hours are twelve points with the slider in the middle; ten times that
    /// when readiness counts.
    fn minutes(&self, minutes: u32) -> i64 {
        i64::from(minutes.min(60_000)) * i64::from(self.work) * if self.soonest { 10 } else { 1 } / 50
    }

    /// What it is worth that a machine of this priority is complete.
    pub fn complete(&self, priority: u32) -> i64 {
        if self.soonest { 2000 + 100 * i64::from(10_u32.saturating_sub(priority)) } else { 0 }
    }
}

impl Term {
    /// In words, to stand after its points.
    pub fn said(self) -> String {
        match self {
            Self::Required => text!("fills a required role").to_owned(),
            Self::Optional => text!("fills an optional role").to_owned(),
            Self::Urgent { priority } => text!("the machine has priority {priority}", priority = priority),
            Self::Dates(true_to) => true_to.said(),
            Self::Brief { standing, rank } => text!(
                "better than {rank} in a hundred of its like, and the machine is to be: {standing}",
                rank = rank,
                standing = standing.label()
            ),
            Self::Proven => text!("proven").to_owned(),
            Self::Sound => text!("nothing outstanding").to_owned(),
            Self::NotSurveyed => text!("nobody has looked at it").to_owned(),
            Self::Work { minutes } => {
                counted!("{count} minute of work outstanding", "{count} minutes of work outstanding", minutes as usize)
            }
            Self::Originality(originality) => originality.label().to_owned(),
            Self::Fitted => text!("fitted there").to_owned(),
            Self::Planned => text!("planned there").to_owned(),
            Self::StaysIn { minutes } => text!("need not be taken out: {minutes} min", minutes = minutes),
            Self::ToFit { minutes } => text!("to be fitted: {minutes} min", minutes = minutes),
            Self::Voids { minutes } => text!("voids tests that hold today: {minutes} min", minutes = minutes),
            Self::ConnectorsUnknown => text!("nobody has said what it needs and offers").to_owned(),
            Self::Between => text!("one more adapter").to_owned(),
        }
    }
}
