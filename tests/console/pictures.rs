//! Pictures: told by content, turned as the camera says, refused when they are cut short or too large; small copies.

use std::fs;
use std::path::Path;

use benchwright::photo::thumbnail::{Cache, shrink};
use benchwright::photo::{Format, Picture, PictureError, drawing};
use benchwright::store::sample::{Shape, Subject};
use image::{DynamicImage, ImageFormat, Rgb, RgbImage};

const RED: Rgb<u8> = Rgb([230, 20, 20]);
const GREEN: Rgb<u8> = Rgb([20, 200, 20]);
const BLUE: Rgb<u8> = Rgb([20, 20, 220]);
const WHITE: Rgb<u8> = Rgb([250, 250, 250]);

/// 48 × 32 pixels: red upper left, green upper right, blue lower left, white lower right.
fn quarters() -> DynamicImage {
    DynamicImage::ImageRgb8(RgbImage::from_fn(48, 32, |x, y| match (x < 24, y < 16) {
        (true, true) => RED,
        (false, true) => GREEN,
        (true, false) => BLUE,
        (false, false) => WHITE,
    }))
}

fn packed(format: ImageFormat) -> Vec<u8> {
    let mut bytes = std::io::Cursor::new(Vec::new());
    quarters().write_to(&mut bytes, format).unwrap();
    bytes.into_inner()
}

/// A JPEG with an Exif segment that holds nothing but the orientation: written by hand after CIPA DC-008 (Exif 2.3),
/// 4.7.2 (APP1) and 4.6.2 (TIFF header and directory, little-endian), tag 0x0112, type SHORT.
fn turned(orientation: u8) -> Vec<u8> {
    let mut exif = b"Exif\0\0II*\0\x08\0\0\0\x01\0\x12\x01\x03\0\x01\0\0\0".to_vec();
    exif.extend([orientation, 0, 0, 0, 0, 0, 0, 0]);
    let jpeg = packed(ImageFormat::Jpeg);
    let length = (exif.len() as u16 + 2).to_be_bytes();
    [&jpeg[..2], &[0xFF, 0xE1], &length, &exif, &jpeg[2..]].concat()
}

fn is_like(pixel: [u8; 4], color: Rgb<u8>) -> bool {
    pixel.iter().zip(color.0).all(|(is, should)| is.abs_diff(should) < 60)
}

#[test]
fn all_eight_orientations_are_turned_as_the_standard_says() {
    // Exif 2.3, 4.6.4 A, Orientation: where the stored 0th row and 0th column are seen. Corners as (right, lower).
    let (left, right, upper, lower) = (false, true, false, true);
    let seen = [
        // Stored upper left corner, stored upper right corner.
        (1, (left, upper), (right, upper)),
        (2, (right, upper), (left, upper)),
        (3, (right, lower), (left, lower)),
        (4, (left, lower), (right, lower)),
        (5, (left, upper), (left, lower)),
        (6, (right, upper), (right, lower)),
        (7, (right, lower), (right, upper)),
        (8, (left, lower), (left, upper)),
    ];
    for (orientation, red, green) in seen {
        let picture = Picture::from_bytes("turned.jpg", turned(orientation)).unwrap();
        let size = if orientation < 5 { (48, 32) } else { (32, 48) };
        assert_eq!((picture.width_px(), picture.height_px()), size, "orientation {orientation}");
        let small = shrink(&picture, 24).unwrap();
        assert_eq!(small.width().max(small.height()), 24);
        let at = |(is_right, is_lower): (bool, bool)| {
            let x = if is_right { small.width() - 3 } else { 2 };
            let y = if is_lower { small.height() - 3 } else { 2 };
            small.get_pixel(x, y).0
        };
        assert!(is_like(at(red), RED), "orientation {orientation}: {:?}", at(red));
        assert!(is_like(at(green), GREEN), "orientation {orientation}: {:?}", at(green));
    }
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
    assert!(error.to_string().contains("bomb.bmp"));
}

#[test]
fn small_copies_are_kept_by_content_and_made_again_when_damaged() {
    let folder = tempfile::tempdir().unwrap();
    let source = folder.path().join("board.png");
    fs::write(&source, packed(ImageFormat::Png)).unwrap();
    let cache_folder = folder.path().join("cache");
    let cache = Cache::new(&cache_folder);
    let content = "ab".repeat(32);
    let first = cache.thumbnail(&content, &source, 24).unwrap();
    assert_eq!((first.width(), first.height()), (24, 16));

    let kept: Vec<_> = fs::read_dir(cache_folder.join("ab")).unwrap().map(|entry| entry.unwrap().path()).collect();
    assert_eq!(kept.len(), 1);
    let hidden = folder.path().join("hidden.png");
    fs::rename(&source, &hidden).unwrap();
    assert_eq!(cache.thumbnail(&content, &source, 24).unwrap().dimensions(), (24, 16), "the kept copy answers");
    assert!(cache.thumbnail(&content, &source, 30).is_err(), "another size needs the picture");

    let whole = fs::read(&kept[0]).unwrap();
    fs::write(&kept[0], &whole[..whole.len() / 2]).unwrap();
    assert!(cache.thumbnail(&content, &source, 24).is_err(), "half a copy is no copy");
    fs::rename(&hidden, &source).unwrap();
    cache.thumbnail(&content, &source, 24).unwrap();
    assert_eq!(fs::read(&kept[0]).unwrap(), whole, "made again");

    // A name that is no hash must not lead out of the folder.
    cache.thumbnail("../../../outside", &source, 24).unwrap();
    assert_eq!(fs::read_dir(folder.path()).unwrap().count(), 2);
}

#[test]
fn transparent_pictures_stand_on_white() {
    let clear = image::RgbaImage::from_pixel(20, 20, image::Rgba([0, 0, 0, 0]));
    let mut bytes = std::io::Cursor::new(Vec::new());
    clear.write_to(&mut bytes, ImageFormat::Png).unwrap();
    let picture = Picture::from_bytes("clear.png", bytes.into_inner()).unwrap();
    assert_eq!(shrink(&picture, 10).unwrap().get_pixel(5, 5).0, [255, 255, 255, 255]);
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
