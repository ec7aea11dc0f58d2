//! Small copies: as the whole picture shrunk, kept by content, made again when damaged.

use std::fs;
use std::path::Path;

use benchwright::photo::thumbnail::{Cache, SIDES_PX, shrink, shrink_each};
use benchwright::photo::{Picture, PictureError};
use image::codecs::jpeg::JpegEncoder;
use image::imageops::FilterType;
use image::{DynamicImage, ImageFormat, Rgb, RgbImage, RgbaImage};

/// A picture with soft and hard edges.
fn scene(width: u32, height: u32) -> RgbImage {
    RgbImage::from_fn(width, height, |x, y| {
        let (across, down) = (x * 255 / width, y * 255 / height);
        if x.abs_diff(width / 2).pow(2) + y.abs_diff(height / 2).pow(2) < (height / 4).pow(2) {
            Rgb([200, down as u8, 30])
        } else {
            Rgb([across as u8, 90, 255 - down as u8])
        }
    })
}

/// The mean difference of two pictures' colours, 0–255.
fn mean_difference(one: &RgbImage, other: &RgbImage) -> f64 {
    assert_eq!(one.dimensions(), other.dimensions());
    let sum: u64 = one.iter().zip(other.iter()).map(|(one, other)| u64::from(one.abs_diff(*other))).sum();
    sum as f64 / one.len() as f64
}

#[test]
fn a_copy_decoded_at_a_part_of_the_size_is_like_the_whole_picture_shrunk() {
    let scene = scene(1600, 1200);
    let mut coloured = Vec::new();
    JpegEncoder::new_with_quality(&mut coloured, 95).encode_image(&scene).unwrap();
    let gray = DynamicImage::ImageRgb8(scene.clone()).into_luma8();
    let mut plain = Vec::new();
    JpegEncoder::new_with_quality(&mut plain, 95).encode_image(&gray).unwrap();
    let gray = DynamicImage::ImageLuma8(gray).into_rgb8();
    for (bytes, whole) in [(coloured, scene), (plain, gray)] {
        let picture = Picture::from_bytes("scene.jpg", bytes).unwrap();
        let sides = [100, 200, 333, 799, 800, 801, 1600, 5000];
        for (small, side) in shrink_each(&picture, sides).unwrap().into_iter().zip(sides) {
            // Shrunk by the image library from the whole picture.
            let expected = DynamicImage::ImageRgb8(whole.clone()).resize(side.min(1600), side, FilterType::Lanczos3);
            let difference = mean_difference(&small, &expected.into_rgb8());
            assert!(difference < 1.5, "{side}: {difference}");
        }
    }
}

/// A copy from the cache; what had to be made for it is kept.
fn thumbnail(cache: &Cache, content: &str, source: &Path, side_px: u32) -> Result<RgbaImage, PictureError> {
    let (image, fresh) = cache.thumbnail(content, source, side_px)?;
    if let Some(copies) = fresh {
        cache.keep(content, &copies);
    }
    Ok(image)
}

#[test]
fn small_copies_are_kept_by_content_and_made_again_when_damaged() {
    let folder = tempfile::tempdir().unwrap();
    let source = folder.path().join("board.png");
    scene(2000, 1500).save(&source).unwrap();
    let cache_folder = folder.path().join("cache");
    let cache = Cache::new(&cache_folder);
    let content = "ab".repeat(32);
    let first = thumbnail(&cache, &content, &source, 256).unwrap();
    assert_eq!(first.dimensions(), (256, 192));

    let mut kept: Vec<_> = fs::read_dir(cache_folder.join("ab")).unwrap().map(|entry| entry.unwrap().path()).collect();
    kept.sort();
    assert_eq!(kept.len(), SIDES_PX.len(), "all sizes are made at once: {kept:?}");
    let hidden = folder.path().join("hidden.png");
    fs::rename(&source, &hidden).unwrap();
    for (side_px, size) in [(256, (256, 192)), (1600, (1600, 1200)), (24, (24, 18)), (300, (300, 225))] {
        assert_eq!(thumbnail(&cache, &content, &source, side_px).unwrap().dimensions(), size, "a kept copy answers");
    }
    assert!(thumbnail(&cache, &content, &source, 1601).is_err(), "a larger one needs the picture");

    let whole = fs::read(&kept[0]).unwrap();
    fs::write(&kept[0], &whole[..whole.len() / 2]).unwrap();
    let damaged = if kept[0].to_string_lossy().contains("-1600") { 1600 } else { 256 };
    assert!(thumbnail(&cache, &content, &source, damaged).is_err(), "half a copy is no copy");
    fs::rename(&hidden, &source).unwrap();
    thumbnail(&cache, &content, &source, damaged).unwrap();
    assert_eq!(fs::read(&kept[0]).unwrap(), whole, "made again");

    // A name that is no hash must not lead out of the folder.
    thumbnail(&cache, "../../../outside", &source, 24).unwrap();
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
