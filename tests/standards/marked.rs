//! Photographs with marks, to measure on.

use benchwright::record::{Moment, Photo, PhotoFile, PhotoMark, PhotoView, When};
use benchwright::store::Store;

/// A photograph of so many pixels with these marks.
pub fn photo((width_px, height_px): (u32, u32), mut marks: Vec<PhotoMark>) -> PhotoFile {
    let photo = Photo {
        id: Store::new_id(),
        part: None,
        machine: None,
        lot: None,
        content: String::new(),
        extension: "png".to_owned(),
        width_px,
        height_px,
        added: Moment::default(),
        taken: When::Unknown,
        view: PhotoView::Detail,
        caption: String::new(),
        is_map: false,
    };
    for mark in &mut marks {
        mark.photo = photo.id;
    }
    PhotoFile { photo, marks }
}
