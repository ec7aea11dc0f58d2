//! What a fact does to the answer on power: the same four words in every table and for every reason.

crate::words! {
    /// What a fact does to "may power be applied?", from harmless to gravest.
    PowerEffect {
        Nothing = "nothing", "Nothing";
        /// Power may be applied, knowing this.
        Remark = "remark", "To know";
        /// Nobody knows enough to say yes.
        NotKnown = "not_known", "Not known";
        No = "no", "No";
    }
}
