//! Whose a part is and who has it: dated events, from which the custody that holds follows.

use serde::{Deserialize, Serialize};

use super::{Id, Moment, PartId, When};

/// The key of a [`CustodyEvent`].
pub type CustodyEventId = Id<CustodyEvent>;

crate::words! {
    /// Whose a part is and who has it.
    ///
    /// | from | to | by |
    /// |---|---|---|
    /// | – | mine | logged without any event |
    /// | – | borrowed in | borrowed |
    /// | mine | lent out | lent |
    /// | lent out | mine | came back |
    /// | borrowed in | given back | gave back |
    /// | borrowed in | mine | bought |
    /// | mine, lent out | sold | sold |
    /// | mine | scrapped | scrapped |
    Custody {
        Mine = "mine", "Mine";
        LentOut = "lent_out", "Lent out";
        BorrowedIn = "borrowed_in", "Borrowed in";
        GivenBack = "given_back", "Given back";
        Sold = "sold", "Sold";
        Scrapped = "scrapped", "Scrapped";
    }
}

impl Custody {
    /// Whether the part is in the workshop, so that it can be worked on and placed.
    pub fn is_at_hand(self) -> bool {
        matches!(self, Self::Mine | Self::BorrowedIn)
    }

    /// The custody after an act; `None` when the act is not possible in this one.
    pub fn after(self, act: CustodyAct) -> Option<Self> {
        use Custody::{BorrowedIn, GivenBack, LentOut, Mine, Scrapped, Sold};
        match (self, act) {
            (Mine, CustodyAct::Borrowed) => Some(BorrowedIn),
            (Mine, CustodyAct::Lent) => Some(LentOut),
            (LentOut, CustodyAct::CameBack) | (BorrowedIn, CustodyAct::Bought) => Some(Mine),
            (BorrowedIn, CustodyAct::GaveBack) => Some(GivenBack),
            (Mine | LentOut, CustodyAct::Sold) => Some(Sold),
            (Mine, CustodyAct::Scrapped) => Some(Scrapped),
            _ => None,
        }
    }
}

crate::words! {
    /// What happened to the custody of a part.
    CustodyAct {
        Borrowed = "borrowed", "Borrowed";
        Lent = "lent", "Lent";
        CameBack = "came_back", "Came back";
        GaveBack = "gave_back", "Gave back";
        Bought = "bought", "Bought";
        Sold = "sold", "Sold";
        Scrapped = "scrapped", "Scrapped";
    }
}

/// One change of hands.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CustodyEvent {
    pub id: CustodyEventId,
    pub part: PartId,
    pub happened: Moment,
    pub act: CustodyAct,
    /// To or from whom.
    pub party: String,
    /// Lent or borrowed until.
    pub until: When,
    /// In hundredths of the logbook's currency.
    pub price_cents: Option<i64>,
    /// Condition going out or coming back.
    pub condition: String,
    pub note: String,
}

/// The key of a [`Valuation`].
pub type ValuationId = Id<Valuation>;

/// What a part was worth on a day, for the insurer.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Valuation {
    pub id: ValuationId,
    pub part: PartId,
    pub on: When,
    /// In hundredths of the logbook's currency.
    pub amount_cents: i64,
    /// By whom, and on what ground.
    pub basis: String,
}
