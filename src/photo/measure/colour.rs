//! What the colour of a patch says: yellowness, and the difference to the side that no light reached or to an earlier
//! photograph, with the lamp taken out by a neutral patch in the same picture.

use serde::Serialize;

use super::seen_on;
use crate::record::{MarkUse, PartFile, PhotoFile, PhotoId, PhotoMark, PhotoMarkId, When};
use crate::text;
use crate::trade::colour::{Correction, ReferenceWarning, Srgb, Yellowness, delta_e_2000, lab, xyz, yellowness};

/// From so many clipped pixels on a patch's mean is not to be trusted (the project's own bound).
const MOST_CLIPPED_PERCENT: f64 = 1.0;

/// What speaks against a colour.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum ColourWarning {
    /// There is no neutral patch in the picture.
    NoReference,
    Reference(ReferenceWarning),
    /// So many per cent of the patch's pixels have a channel at its end.
    Clipped(f64),
    /// There is no neutral patch in the earlier picture.
    EarlierWithoutReference,
    EarlierReference(ReferenceWarning),
}

impl ColourWarning {
    /// In words.
    pub fn said(self) -> String {
        match self {
            Self::NoReference => text!(
                "No neutral patch is marked in the picture: the lamp's colour is in the figures. Put grey card or white paper beside the part."
            )
            .to_owned(),
            Self::Reference(warning) => warning.said().to_owned(),
            Self::Clipped(percent) => text!(
                "{percent} % of the patch is over- or underexposed: its colour is not known",
                percent = format!("{percent:.1}")
            ),
            Self::EarlierWithoutReference => {
                text!("No neutral patch is marked in the earlier picture: the difference may be the lamp's").to_owned()
            }
            Self::EarlierReference(warning) => {
                text!("In the earlier picture: {warning}", warning = warning.said())
            }
        }
    }
}

/// What a patch was compared with.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Other {
    /// The hidden side in the same picture.
    Hidden { mark: PhotoMarkId },
    /// The same patch in an earlier picture of the part.
    Earlier { mark: PhotoMarkId, photo: PhotoId, on: When },
}

/// How a patch differs from another.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Difference {
    pub other: Other,
    pub delta_e_2000: f64,
    /// How much yellower it is than the other, in points of the index; `None` where either has none.
    pub yellower: Option<f64>,
}

/// What a patch's colour says.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Tone {
    /// With the lamp taken out, as far as that could be done.
    pub colour: Srgb,
    /// `None` for black, and for the neutral patch itself.
    pub yellowness: Option<Yellowness>,
    pub differences: Vec<Difference>,
    pub warnings: Vec<ColourWarning>,
}

/// The colour of a patch as it was taken off the picture.
fn colour_of(mark: &PhotoMark) -> Option<Srgb> {
    mark.colour().map(|[red, green, blue]| Srgb { red, green, blue })
}

fn is_clipped(mark: &PhotoMark) -> Option<ColourWarning> {
    mark.clipped_percent.filter(|percent| *percent > MOST_CLIPPED_PERCENT).map(ColourWarning::Clipped)
}

/// A neutral patch, and what speaks against it.
#[derive(Clone, Copy)]
struct Neutral {
    colour: Srgb,
    warning: Option<ReferenceWarning>,
}

impl Neutral {
    /// The picture's neutral patch: the first that nothing speaks against, or else the first.
    fn of(marks: &[PhotoMark]) -> Option<Self> {
        let patches = marks.iter().filter(|mark| mark.role == MarkUse::Reference).filter_map(|mark| {
            let colour = colour_of(mark)?;
            let clipped = is_clipped(mark).map(|_| ReferenceWarning::Clipped);
            Some(Self { colour, warning: clipped.or(Correction::by(colour, None).warning) })
        });
        patches.min_by_key(|patch| patch.warning.is_some())
    }

    /// Its luminance, 0–1: weights of sRGB, IEC 61966-2-1.
    fn luminance(self) -> f64 {
        xyz(self.colour).y / 100.0
    }
}

/// What the patch says, beside the other marks of its picture and the part's earlier pictures; `None` until its colour
/// was taken off the picture.
pub fn tone(mark: &PhotoMark, photo: &PhotoFile, part: Option<&PartFile>) -> Option<Tone> {
    let sampled = colour_of(mark)?;
    let neutral = Neutral::of(&photo.marks);
    let mut warnings: Vec<ColourWarning> = is_clipped(mark).into_iter().collect();
    if mark.role == MarkUse::Reference {
        let own = Correction::by(sampled, None).warning.filter(|_| warnings.is_empty());
        warnings.extend(own.map(ColourWarning::Reference));
        return Some(Tone { colour: sampled, yellowness: None, differences: Vec::new(), warnings });
    }
    match neutral {
        None => warnings.push(ColourWarning::NoReference),
        Some(neutral) => warnings.extend(neutral.warning.map(ColourWarning::Reference)),
    }
    let colour = corrected(sampled, neutral, None);
    let mut differences = Vec::new();
    if mark.role == MarkUse::Sample {
        if let Some((hidden, other)) = hidden_side(mark, &photo.marks) {
            differences.push(difference(Other::Hidden { mark: hidden }, colour, corrected(other, neutral, None)));
        }
        if let Some(earlier) = part.and_then(|part| Earlier::of(mark, photo, part)) {
            warnings.extend(match earlier.neutral {
                None => Some(ColourWarning::EarlierWithoutReference),
                Some(other) => other.warning.map(ColourWarning::EarlierReference),
            });
            differences.push(earlier.difference(sampled, neutral));
        }
    }
    Some(Tone { colour, yellowness: yellowness(colour), differences, warnings })
}

fn corrected(sampled: Srgb, neutral: Option<Neutral>, luminance: Option<f64>) -> Srgb {
    neutral.map_or(sampled, |neutral| Correction::by(neutral.colour, luminance).of(sampled))
}

fn difference(other: Other, mine: Srgb, theirs: Srgb) -> Difference {
    let yellower = yellowness(mine).zip(yellowness(theirs)).map(|(mine, theirs)| mine.index - theirs.index);
    Difference { other, delta_e_2000: delta_e_2000(lab(xyz(mine)), lab(xyz(theirs))), yellower }
}

/// The hidden side that goes with a patch: tied to the same finding, else of the same note, else the first.
fn hidden_side(mark: &PhotoMark, marks: &[PhotoMark]) -> Option<(PhotoMarkId, Srgb)> {
    let hidden = marks.iter().filter(|other| other.role == MarkUse::Hidden);
    let with_colour = hidden.filter_map(|other| Some((other, colour_of(other)?)));
    let rank = |other: &PhotoMark| match () {
        () if is_same_finding(mark, other) => 0,
        () if is_same_note(mark, other) => 1,
        () => 2,
    };
    with_colour.min_by_key(|(other, _)| rank(other)).map(|(other, colour)| (other.id, colour))
}

fn is_same_finding(one: &PhotoMark, other: &PhotoMark) -> bool {
    one.finding.is_some() && one.finding == other.finding
}

fn is_same_note(one: &PhotoMark, other: &PhotoMark) -> bool {
    !one.note.trim().is_empty() && one.note.trim().eq_ignore_ascii_case(other.note.trim())
}

/// The same patch in an earlier picture.
struct Earlier {
    other: Other,
    sampled: Srgb,
    neutral: Option<Neutral>,
}

impl Earlier {
    /// The last patch before this picture that is tied to the same finding or has the same note.
    fn of(mark: &PhotoMark, photo: &PhotoFile, part: &PartFile) -> Option<Self> {
        let now = seen_on(&photo.photo).span()?;
        let is_same = |other: &&PhotoMark| is_same_finding(mark, other) || is_same_note(mark, other);
        let earlier = part.photos.iter().filter_map(|file| {
            let on = seen_on(&file.photo);
            let last = on.span()?.last;
            let mut patches = file.marks.iter().filter(|other| other.role == MarkUse::Sample).filter(is_same);
            let patch = patches.find(|other| other.colour().is_some())?;
            (last < now.first).then_some((last, on, file, patch))
        });
        let (_, on, file, patch) = earlier.max_by_key(|(last, ..)| *last)?;
        Some(Self {
            other: Other::Earlier { mark: patch.id, photo: file.photo.id, on },
            sampled: colour_of(patch)?,
            neutral: Neutral::of(&file.marks),
        })
    }

    /// Two pictures are seldom equally bright. The neutral patch is taken for the same one in both: the brighter picture
    /// is darkened until it is as bright in both, so that no channel is pushed over its end.
    fn difference(&self, sampled: Srgb, neutral: Option<Neutral>) -> Difference {
        let both = neutral.zip(self.neutral).map(|(mine, theirs)| mine.luminance().min(theirs.luminance()));
        difference(self.other, corrected(sampled, neutral, both), corrected(self.sampled, self.neutral, both))
    }
}
