//! The pieces of a JPEG file, told apart but not decoded. Source: ITU-T T.81, annex B (markers and segments).

/// The end of the picture.
pub const END: u8 = 0xD9;
/// The header of a scan; its coded data follows.
const SCAN: u8 = 0xDA;

/// One piece of a file after its start marker.
#[derive(Clone, Copy, Debug)]
pub struct Piece<'a> {
    /// The marker's second byte; `None` for the coded data of a scan.
    pub marker: Option<u8>,
    /// The piece as it stands in the file, marker and length with it.
    pub whole: &'a [u8],
}

impl<'a> Piece<'a> {
    /// What a segment says, without marker and length.
    pub fn body(&self) -> &'a [u8] {
        self.whole.get(4..).unwrap_or_default()
    }
}

/// The pieces of a file, up to its end marker, the end of the bytes or the first byte that fits nowhere.
#[derive(Clone, Debug)]
pub struct Pieces<'a> {
    bytes: &'a [u8],
    at: usize,
    is_data: bool,
    is_over: bool,
    /// Whether the bytes ended before the picture did.
    pub is_cut_short: bool,
}

/// The pieces of a file that begins with a start marker (FF D8).
pub fn pieces(bytes: &[u8]) -> Pieces<'_> {
    Pieces { bytes, at: 2, is_data: false, is_over: false, is_cut_short: false }
}

/// Whether the bytes end before the picture does; decoders pass over that and fill the rest with grey.
pub fn is_cut_short(bytes: &[u8]) -> bool {
    let mut pieces = pieces(bytes);
    pieces.by_ref().for_each(drop);
    pieces.is_cut_short
}

impl<'a> Pieces<'a> {
    /// Two bytes from `at` on; without them the picture is cut short.
    fn pair(&mut self, at: usize) -> Option<[u8; 2]> {
        let pair = self.bytes.get(at..at + 2).and_then(|pair| pair.try_into().ok());
        self.is_cut_short |= pair.is_none();
        pair
    }

    fn piece(&mut self, marker: Option<u8>, end: usize) -> Option<Piece<'a>> {
        let whole = self.bytes.get(self.at..end);
        self.is_cut_short |= whole.is_none();
        self.at = end;
        Some(Piece { marker, whole: whole? })
    }

    fn segment(&mut self) -> Option<Piece<'a>> {
        let mut pair = self.pair(self.at)?;
        // Any number of FF may stand before a marker.
        while pair == [0xFF, 0xFF] {
            self.at += 1;
            pair = self.pair(self.at)?;
        }
        match pair {
            [0xFF, marker @ (0x01 | 0xD0..=END)] => self.piece(Some(marker), self.at + 2),
            [0xFF, marker] => {
                let length = u16::from_be_bytes(self.pair(self.at + 2)?);
                self.is_data = marker == SCAN;
                self.piece(Some(marker), self.at + 2 + usize::from(length).max(2))
            }
            // Not a marker: the decoder says what is wrong with it.
            _ => None,
        }
    }

    /// Coded data ends before the first marker; FF 00 is a data byte, FF D0 to D7 are restarts within the data.
    fn data(&mut self) -> Option<Piece<'a>> {
        let mut at = self.at;
        while let Some(found) = self.bytes.get(at..).and_then(|rest| rest.iter().position(|byte| *byte == 0xFF)) {
            at += found;
            match self.pair(at)? {
                [_, 0x00 | 0xD0..=0xD7] => at += 2,
                [_, 0xFF] => at += 1,
                _ => return self.piece(None, at),
            }
        }
        self.is_cut_short = true;
        None
    }
}

impl<'a> Iterator for Pieces<'a> {
    type Item = Piece<'a>;

    fn next(&mut self) -> Option<Piece<'a>> {
        if self.is_over {
            return None;
        }
        let piece = if std::mem::take(&mut self.is_data) { self.data() } else { self.segment() };
        self.is_over = piece.is_none_or(|piece| piece.marker == Some(END));
        piece
    }
}
