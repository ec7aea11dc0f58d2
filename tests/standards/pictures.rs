//! Pictures laid over each other by points, and cut into tiles: against geometry worked out by hand and by a library.

use benchwright::photo::align::{Affine, AlignError, align};
use benchwright::photo::tiles::{RIM_PX, TILE_PX, Tile, cut};
use image::{Rgb, RgbImage};

fn close([x, y]: [f64; 2], [to_x, to_y]: [f64; 2]) {
    assert!((x - to_x).abs() < 1e-6 && (y - to_y).abs() < 1e-6, "({x}, {y}) is not ({to_x}, {to_y})");
}

/// By hand: a quarter turn clockwise on the screen takes (x, y) to (−y, x); here with scale 2 and shift (100, 50).
#[test]
fn two_points_give_turn_scale_and_shift() {
    let turned = |[x, y]: [f64; 2]| [-2.0 * y + 100.0, 2.0 * x + 50.0];
    let map = align(&[(turned([10.0, 20.0]), [10.0, 20.0]), (turned([300.0, 70.0]), [300.0, 70.0])]).unwrap();
    for point in [[0.0, 0.0], [1.0, 0.0], [0.0, 1.0], [-40.0, 913.0]] {
        close(map.of(point), turned(point));
    }
    assert!((map.growth() - 4.0).abs() < 1e-9, "areas grow by the scale squared");
    let back = map.back().unwrap();
    close(back.of(map.of([17.0, -3.0])), [17.0, -3.0]);
}

/// By hand: a shear takes the unit square's corner (1, 1) to (1 + 0.5, 1).
#[test]
fn three_points_give_a_shear_too() {
    let pairs = [([0.0, 0.0], [0.0, 0.0]), ([100.0, 0.0], [100.0, 0.0]), ([50.0, 100.0], [0.0, 100.0])];
    let map = align(&pairs).unwrap();
    close(map.of([100.0, 100.0]), [150.0, 100.0]);
    assert_eq!(map.then(&Affine::IDENTITY), map);
}

/// Computed with scikit-image 0.26.0, `SimilarityTransform` and `AffineTransform` estimated from the same points: where
/// the point (1234, 567) goes.
#[test]
fn maps_agree_with_a_library() {
    let points: [(&[benchwright::photo::align::Pair], [f64; 2]); 4] = [
        (
            &[([640.0, 512.0], [812.0, 340.0]), ([2911.0, 1876.0], [3020.0, 2210.0])],
            [1054.8041560103218, 654.8628751180697],
        ),
        (
            &[([900.0, 120.0], [100.0, 100.0]), ([115.0, 110.0], [100.0, 900.0])],
            [427.58125000000007, 1226.8999999999999],
        ),
        (
            &[
                ([640.0, 512.0], [812.0, 340.0]),
                ([2911.0, 1876.0], [3020.0, 2210.0]),
                ([700.0, 2904.0], [410.0, 2750.0]),
            ],
            [1051.5933775946726, 647.512731392289],
        ),
        (
            &[([50.0, 70.0], [0.0, 0.0]), ([1050.0, 270.0], [1000.0, 0.0]), ([-150.0, 900.0], [0.0, 1000.0])],
            [1170.5999999999995, 787.4100000000003],
        ),
    ];
    for (pairs, there) in points {
        close(align(pairs).unwrap().of([1234.0, 567.0]), there);
    }
}

#[test]
fn points_that_tell_nothing_are_refused() {
    let at = |x: f64, y: f64| ([x, y], [x, y]);
    assert_eq!(align(&[]), Err(AlignError::Count));
    assert_eq!(align(&[at(1.0, 1.0)]), Err(AlignError::Count));
    assert_eq!(align(&[at(1.0, 1.0), ([9.0, 9.0], [1.2, 1.0])]), Err(AlignError::SameSpot));
    assert_eq!(align(&[at(0.0, 0.0), at(50.0, 50.0), at(100.0, 100.0)]), Err(AlignError::OneLine));
    assert_eq!(align(&[at(0.0, 0.0), at(50.0, 0.0), at(50.0, 0.1)]), Err(AlignError::SameSpot));
}

/// A picture in which every pixel tells where it stands.
fn told(width: u32, height: u32) -> RgbImage {
    RgbImage::from_fn(width, height, |x, y| Rgb([(x % 256) as u8, (y % 256) as u8, (x / 256 * 16 + y / 256) as u8]))
}

/// Against the crop of the library `image`: tiles of level 0 are pixel for pixel.
#[test]
fn a_tile_is_the_picture_itself() {
    let picture = told(1300, 700);
    for (x, y, width, height) in [(0, 0, TILE_PX, TILE_PX), (1, 0, TILE_PX, TILE_PX), (2, 1, 276, 188)] {
        let tile = cut(&picture, Tile { level: 0, x, y }).unwrap();
        assert_eq!(tile.dimensions(), (width + 2 * RIM_PX, height + 2 * RIM_PX));
        let inner = image::imageops::crop_imm(&tile, RIM_PX, RIM_PX, width, height).to_image();
        let there = image::imageops::crop_imm(&picture, x * TILE_PX, y * TILE_PX, width, height).to_image();
        assert!(inner == there, "tile {x}, {y}");
    }
    // The rim is the neighbour's pixel, or the picture's own where there is none.
    let second = cut(&picture, Tile { level: 0, x: 1, y: 0 }).unwrap();
    assert_eq!(second.get_pixel(0, RIM_PX), picture.get_pixel(TILE_PX - 1, 0));
    assert_eq!(second.get_pixel(RIM_PX, 0), picture.get_pixel(TILE_PX, 0));
    assert!(cut(&picture, Tile { level: 0, x: 3, y: 0 }).is_none());
}

/// By hand: a level higher, a pixel is the mean of four.
#[test]
fn a_higher_level_is_the_mean_of_squares() {
    let mut picture = RgbImage::from_pixel(2 * TILE_PX + 1, 4, Rgb([10, 20, 30]));
    picture.put_pixel(0, 0, Rgb([50, 20, 30]));
    picture.put_pixel(1, 1, Rgb([10, 60, 30]));
    picture.put_pixel(2 * TILE_PX, 3, Rgb([99, 98, 97]));
    let tile = cut(&picture, Tile { level: 1, x: 0, y: 0 }).unwrap();
    assert_eq!(tile.dimensions(), (TILE_PX + 2, 2 + 2));
    assert_eq!(tile.get_pixel(RIM_PX, RIM_PX), &Rgb([20, 30, 30]));
    assert_eq!(tile.get_pixel(RIM_PX + 1, RIM_PX), &Rgb([10, 20, 30]));
    // The last column is half a square wide: the mean of the two pixels that are there, 54.5 and so on, rounded up.
    let last = cut(&picture, Tile { level: 1, x: 1, y: 0 }).unwrap();
    assert_eq!(last.dimensions(), (1 + 2, 2 + 2));
    assert_eq!(last.get_pixel(RIM_PX, RIM_PX + 1), &Rgb([55, 59, 64]));
}

#[test]
fn the_level_has_a_pixel_for_each_of_the_screen() {
    for (zoom, level) in [(4.0, 0), (1.0, 0), (0.51, 0), (0.5, 1), (0.3, 1), (0.25, 2), (0.01, 6)] {
        assert_eq!(Tile::level_for(zoom), level, "at {zoom}");
    }
}
