//! Pictures are told by content, refused when they are cut short or too large, and drawn.

use std::fs;
use std::path::Path;

use benchwright::photo::{Format, Picture, PictureError, drawing};
use benchwright::store::sample::{Shape, Subject};
use image::{ImageFormat, Rgb};

use super::quarters::{GREEN, RED, packed};

fn is_like(pixel: [u8; 4], color: Rgb<u8>) -> bool {
    pixel.iter().zip(color.0).all(|(is, should)| is.abs_diff(should) < 60)
}

#[test]
fn a_file_is_what_its_content_says_whatever_its_name() {
    let folder = tempfile::tempdir().unwrap();
    let formats = [
        (ImageFormat::Jpeg, Format::Jpeg),
        (ImageFormat::Png, Format::Png),
        (ImageFormat::WebP, Format::Webp),
        (ImageFormat::Tiff, Format::Tiff),
        (ImageFormat::Bmp, Format::Bmp),
        (ImageFormat::Gif, Format::Gif),
    ];
    for (written, format) in formats {
        let path = folder.path().join("holiday.txt");
        fs::write(&path, packed(written)).unwrap();
        let picture = Picture::open(&path).unwrap();
        assert_eq!((picture.format(), picture.width_px(), picture.height_px()), (format, 48, 32));
        let decoded = picture.decode().unwrap().into_rgba8();
        assert!(is_like(decoded.get_pixel(4, 4).0, RED) && is_like(decoded.get_pixel(43, 4).0, GREEN), "{format:?}");
    }
}

/// Why a file of this content is refused, at the latest when it is decoded.
fn refusal(folder: &Path, name: &str, content: &[u8]) -> PictureError {
    let path = folder.join(name);
    fs::write(&path, content).unwrap();
    match Picture::open(&path) {
        Ok(picture) => picture.decode().map(|_| ()).unwrap_err(),
        Err(error) => error,
    }
}

#[test]
fn what_is_no_whole_picture_is_refused_by_name() {
    let folder = tempfile::tempdir().unwrap();
    let folder = folder.path();
    let empty = refusal(folder, "empty.jpg", b"");
    assert!(matches!(empty, PictureError::Empty { .. }) && empty.to_string().contains("empty.jpg"));
    let letter = refusal(folder, "letter.jpg", b"Dear restorer, this is no picture at all.");
    assert!(matches!(letter, PictureError::NotAPicture { .. }) && letter.to_string().contains("letter.jpg"));
    for format in [ImageFormat::Jpeg, ImageFormat::Png, ImageFormat::WebP, ImageFormat::Bmp, ImageFormat::Gif] {
        let whole = packed(format);
        for share in [30, 60, 90] {
            let cut = &whole[..whole.len() * share / 100];
            let error = refusal(folder, "cut.img", cut);
            assert!(error.to_string().contains("cut.img"), "{error}");
            let is_told = matches!(error, PictureError::CutShort { .. } | PictureError::Damaged { .. });
            assert!(is_told, "{format:?} cut to {share} %: {error}");
        }
    }
    let jpeg = packed(ImageFormat::Jpeg);
    let almost = refusal(folder, "almost.jpg", &jpeg[..jpeg.len() - 2]);
    assert!(matches!(almost, PictureError::CutShort { .. }), "{almost}");
    assert!(matches!(Picture::open(folder), Err(PictureError::Unreadable { .. } | PictureError::NotAPicture { .. })));
    // HEIC, by the first box of a file whose rest did not arrive.
    let heic = refusal(folder, "phone.heic", include_bytes!("../heic/quarters-1.heic").split_at(400).0);
    assert!(matches!(heic, PictureError::CutShort { .. }), "{heic}");
    let film = refusal(folder, "film.heic", b"\0\0\0\x14ftypqt  \0\0\0\0qt  and so on");
    assert!(matches!(film, PictureError::NotAPicture { .. }), "{film}");
    let absent = Picture::open(&folder.join("gone.png")).map(|_| ()).unwrap_err();
    assert!(matches!(absent, PictureError::Unreadable { .. }) && absent.to_string().contains("gone.png"));
}

#[test]
fn a_few_bytes_that_claim_a_huge_picture_are_refused_before_decoding() {
    let folder = tempfile::tempdir().unwrap();
    // A Windows bitmap's headers (BITMAPFILEHEADER, BITMAPINFOHEADER): 40,000 × 40,000 pixels of 24 bits.
    let mut bomb = b"BM".to_vec();
    bomb.extend([0; 8]);
    bomb.extend(54_u32.to_le_bytes());
    bomb.extend(40_u32.to_le_bytes());
    bomb.extend(40_000_i32.to_le_bytes());
    bomb.extend(40_000_i32.to_le_bytes());
    bomb.extend([1, 0, 24, 0]);
    bomb.extend([0; 24]);
    let path = folder.path().join("bomb.bmp");
    fs::write(&path, &bomb).unwrap();
    let error = Picture::open(&path).map(|_| ()).unwrap_err();
    assert!(matches!(error, PictureError::TooManyPixels { width_px: 40_000, height_px: 40_000, .. }), "{error}");
    let said = error.to_string();
    assert!(said.contains("bomb.bmp") && said.contains("40000 × 40000") && said.contains("120 million"), "{said}");
}

#[test]
fn the_same_words_draw_the_same_picture_and_a_crust_shows_where_it_is_told() {
    let sound = Subject { shape: Shape::Board, cell: "barrel".to_owned(), seed: 5, ..Subject::default() };
    let leaked = Subject { crust: Some([0.8, 0.2, 0.06]), ..sound.clone() };
    assert_eq!(drawing::draw_jpeg(&sound), drawing::draw_jpeg(&sound));
    let (before, after) = (drawing::draw(&sound), drawing::draw(&leaked));
    let changed = |x: std::ops::Range<u32>, y: std::ops::Range<u32>| {
        let pixels = x.flat_map(|x| y.clone().map(move |y| (x, y)));
        pixels.filter(|(x, y)| before.get_pixel(*x, *y) != after.get_pixel(*x, *y)).count()
    };
    assert!(changed(590..690, 70..170) > 2000);
    assert_eq!(changed(0..400, 300..600), 0);
}
