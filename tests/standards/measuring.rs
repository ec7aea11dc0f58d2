//! Measuring on photographs against geometry that is known otherwise: a camera's own equations, and published areas.

use std::f64::consts::PI;

use benchwright::photo::measure::{Basis, MeasureError, Measured, Plane, Region, Unit, shares};
use benchwright::record::{MarkUse, PhotoMark, Word as _};
use benchwright::store::Store;
use proptest::prelude::*;

use crate::chance::Chance;
use crate::fuzz::rounds;

type Point = [f64; 2];

const WIDTH: u32 = 4000;
const HEIGHT: u32 = 3000;

fn area(outline: &[Point]) -> f64 {
    Region::of(&[outline.to_vec()]).unwrap().area()
}

fn mark(role: MarkUse, pixels: &[Point]) -> PhotoMark {
    let share = |[x, y]: &Point| [(x / f64::from(WIDTH)) as f32, (y / f64::from(HEIGHT)) as f32];
    PhotoMark::new(Store::new_id(), Store::new_id(), role, pixels.iter().map(share).collect())
}

fn scale(pixels: [Point; 2], mm: f64) -> PhotoMark {
    PhotoMark { length_mm: Some(mm), ..mark(MarkUse::Scale, &pixels) }
}

fn rectangle(pixels: [Point; 4], sides_mm: [f64; 2]) -> PhotoMark {
    PhotoMark { length_mm: Some(sides_mm[0]), breadth_mm: Some(sides_mm[1]), ..mark(MarkUse::Rectangle, &pixels) }
}

fn plane(marks: &[PhotoMark]) -> Result<Plane, MeasureError> {
    Plane::of((WIDTH, HEIGHT), marks)
}

fn is_near(one: f64, other: f64, share: f64) -> bool {
    (one - other).abs() <= share * other.abs()
}

/// A pinhole camera over a bench, tilted and turned: where it sees a point of the bench (mm), in pixels.
/// Source: Hartley, Zisserman, "Multiple View Geometry in Computer Vision", 6.1: x = K R (X − C), divided by its third.
fn seen(tilt: f64, turn: f64, [x, y]: Point) -> Point {
    let (focal, height) = (3200.0, 400.0);
    let [x, y] = [x * turn.cos() - y * turn.sin(), x * turn.sin() + y * turn.cos()];
    let (down, away) = (y * tilt.cos(), height + y * tilt.sin());
    [f64::from(WIDTH) / 2.0 + focal * x / away, f64::from(HEIGHT) / 2.0 + focal * down / away]
}

#[test]
fn a_known_rectangle_measures_what_a_tilted_camera_sees() {
    for tilt in [0.0_f64, 15.0, 30.0, 45.0, 60.0].map(f64::to_radians) {
        for turn in [0.0_f64, 20.0, 75.0, 130.0].map(f64::to_radians) {
            // A bank card (ISO/IEC 7810 ID-1: 85.60 mm × 53.98 mm) lies beside the part.
            let see = |points: &[Point]| points.iter().map(|point| seen(tilt, turn, *point)).collect::<Vec<_>>();
            let card: [Point; 4] =
                see(&[[-80.0, -30.0], [5.6, -30.0], [5.6, 23.98], [-80.0, 23.98]]).try_into().unwrap();
            let square = mark(MarkUse::Surface, &see(&[[20.0, 10.0], [60.0, 10.0], [60.0, 50.0], [20.0, 50.0]]));
            let line = mark(MarkUse::Length, &see(&[[20.0, -40.0], [50.0, 0.0]]));
            let plane = plane(&[rectangle(card, [85.6, 53.98])]).unwrap();
            assert_eq!(plane.unit(), Unit::Mm);
            assert!(is_near(plane.area(&square.points).unwrap(), 1600.0, 1e-4), "tilt {tilt} turn {turn}");
            assert!(is_near(plane.length(&line.points).unwrap(), 50.0, 1e-4), "tilt {tilt} turn {turn}");
            // The other way round the card, and from another corner of it, it is the same bench.
            let [a, b, c, d] = card;
            for (other, sides) in [([d, c, b, a], [85.6, 53.98]), ([b, c, d, a], [53.98, 85.6])] {
                let plane = self::plane(&[rectangle(other, sides)]).unwrap();
                assert!(is_near(plane.area(&square.points).unwrap(), 1600.0, 1e-4));
            }
        }
    }
}

/// Without its tilt taken out the same square is wrong by far: the test above does not pass by itself.
#[test]
fn a_scale_is_right_only_from_straight_ahead() {
    let square = [[20.0, 10.0], [60.0, 10.0], [60.0, 50.0], [20.0, 50.0]];
    let measured = |tilt: f64| {
        let see = |point| seen(tilt.to_radians(), 0.3, point);
        let plane = plane(&[scale([see([-80.0, -30.0]), see([5.6, -30.0])], 85.6)]).unwrap();
        plane.area(&mark(MarkUse::Surface, &square.map(see)).points).unwrap()
    };
    assert!(is_near(measured(0.0), 1600.0, 1e-4));
    assert!(!is_near(measured(40.0), 1600.0, 0.1));
}

#[test]
fn what_lies_beyond_the_horizon_has_no_length() {
    let see = |point| seen(80.0_f64.to_radians(), 0.0, point);
    let card = [[-40.0, -30.0], [40.0, -30.0], [40.0, 20.0], [-40.0, 20.0]].map(see);
    let plane = plane(&[rectangle(card, [80.0, 50.0])]).unwrap();
    // The bench's horizon: focal × cot(tilt) below the middle of the picture.
    let horizon = 1500.0 + 3200.0 / 80.0_f64.to_radians().tan();
    let line = |y: f64| mark(MarkUse::Length, &[[1000.0, y], [1400.0, y]]);
    assert!(plane.length(&line(horizon - 30.0).points).is_ok());
    assert_eq!(plane.length(&line(horizon + 1.0).points), Err(MeasureError::BeyondHorizon));
    assert_eq!(plane.length(&line(2900.0).points), Err(MeasureError::BeyondHorizon));
}

#[test]
fn what_cannot_be_measured_by_is_refused_with_its_reason() {
    let corners = |points| plane(&[rectangle(points, [80.0, 50.0])]).unwrap_err();
    assert_eq!(corners([[0.0, 0.0], [100.0, 0.0], [200.0, 0.0], [0.0, 100.0]]), MeasureError::FlatRectangle);
    assert_eq!(corners([[0.0, 0.0], [0.0, 0.0], [100.0, 100.0], [0.0, 100.0]]), MeasureError::FlatRectangle);
    // Two corners swapped, and one pushed in.
    assert_eq!(corners([[0.0, 0.0], [100.0, 100.0], [100.0, 0.0], [0.0, 100.0]]), MeasureError::CrossedRectangle);
    assert_eq!(corners([[0.0, 0.0], [100.0, 0.0], [30.0, 30.0], [0.0, 100.0]]), MeasureError::CrossedRectangle);
    let square = [[10.0, 10.0], [90.0, 10.0], [90.0, 60.0], [10.0, 60.0]];
    for sides in [[0.0, 50.0], [80.0, -1.0], [f64::NAN, 50.0], [f64::INFINITY, 1.0]] {
        assert_eq!(plane(&[rectangle(square, sides)]), Err(MeasureError::NoLength));
    }
    assert_eq!(plane(&[mark(MarkUse::Rectangle, &square)]), Err(MeasureError::NoLength));
    assert_eq!(plane(&[scale([[10.0, 10.0], [10.0, 10.0]], 5.0)]), Err(MeasureError::ScaleOfNothing));
    assert_eq!(plane(&[scale([[10.0, 10.0], [90.0, 10.0]], 0.0)]), Err(MeasureError::NoLength));
    assert_eq!(plane(&[scale([[10.0, 10.0], [9000.0, 10.0]], 1.0)]), Err(MeasureError::OffPicture));
}

/// A rectangle goes before a scale; the largest of each is taken, and the others are held against it.
#[test]
fn scales_and_rectangles_are_held_against_each_other() {
    // From straight ahead at 10 pixels a millimetre.
    let card = rectangle([[100.0, 100.0], [956.0, 100.0], [956.0, 639.8], [100.0, 639.8]], [85.6, 53.98]);
    let right = scale([[0.0, 1000.0], [500.0, 1000.0]], 50.0);
    let wrong = scale([[0.0, 2000.0], [1000.0, 2000.0]], 80.0);
    assert_eq!(plane(&[right.clone(), card.clone()]).unwrap().basis(), Basis::Rectangle(card.id));
    assert_eq!(plane(&[right.clone(), wrong.clone()]).unwrap().basis(), Basis::Scale(wrong.id));
    let line = mark(MarkUse::Length, &[[0.0, 0.0], [300.0, 400.0], [300.0, 500.0]]);
    let marks = vec![right.clone(), card, wrong.clone(), line];
    let photo = crate::marked::photo((WIDTH, HEIGHT), marks);
    let measured = Measured::of(&photo, None);
    // 50 mm are 50 mm; 100 mm were told to be 80: 25 % more. The line is 50 mm and 10 mm long (3, 4, 5).
    let said: Vec<Vec<String>> = measured.lines.iter().map(|line| measured.said(line, &photo).figures).collect();
    assert_eq!(said[0], ["50.0 mm", "By the known rectangle: +0.0 %"]);
    assert_eq!(said[2], ["80.0 mm", "By the known rectangle: +25.0 %"]);
    assert_eq!(said[3], ["60.0 mm"]);
    assert!(measured.said(&measured.lines[0], &photo).heeds.is_empty());
    assert_eq!(measured.said(&measured.lines[2], &photo).heeds.len(), 1);
}

/// Pick's theorem: a polygon on whole coordinates encloses I + B/2 − 1, with I whole points inside and B on its edge.
/// Heron's formula for the triangle of sides 13, 14, 15: 84. A regular polygon: n/2 · r² · sin(2π/n).
#[test]
fn areas_are_those_of_published_formulas() {
    // I = 1, B = 8 by counting on squared paper: 1 + 4 − 1 = 4; an L: I = 0, B = 8: 3.
    assert_eq!(area(&[[0.0, 0.0], [2.0, 0.0], [2.0, 2.0], [0.0, 2.0]]), 4.0);
    assert!(is_near(area(&[[0.0, 0.0], [2.0, 0.0], [2.0, 1.0], [1.0, 1.0], [1.0, 2.0], [0.0, 2.0]]), 3.0, 1e-12));
    assert!(is_near(area(&[[0.0, 0.0], [14.0, 0.0], [5.0, 12.0]]), 84.0, 1e-12));
    for corners in [3_u32, 5, 17, 400, 10_000] {
        let count = f64::from(corners);
        let angle = |corner: u32| 2.0 * PI * f64::from(corner) / count;
        let outline: Vec<Point> =
            (0..corners).map(|corner| [500.0 + 30.0 * angle(corner).cos(), 30.0 * angle(corner).sin()]).collect();
        assert!(is_near(area(&outline), count / 2.0 * 900.0 * (2.0 * PI / count).sin(), 1e-9), "{corners} corners");
    }
}

/// A pentagram drawn in one line goes round its middle twice, and that is inside. MathWorld, "Pentagram": with
/// circumradius 1 its area, the middle with it, is 1.12257.
#[test]
fn an_outline_that_crosses_itself_encloses_what_it_goes_round() {
    let corner = |number: u32| {
        let angle = PI / 2.0 + 4.0 * PI / 5.0 * f64::from(number);
        [angle.cos(), angle.sin()]
    };
    let star: Vec<Point> = (0..5).map(corner).collect();
    assert!(is_near(area(&star), 1.12257, 1e-5));
    // An eight: both loops, though they turn against each other. Two triangles of base 2 and height 1.
    assert!(is_near(area(&[[0.0, 0.0], [2.0, 2.0], [2.0, 0.0], [0.0, 2.0]]), 2.0, 1e-12));
}

/// Two discs of radius 1 whose middles are 1 apart have 2π/3 − √3/2 in common (MathWorld, "Lens").
#[test]
fn overlapping_damage_counts_once_and_only_within_the_surface() {
    let disc = |x: f64, y: f64, radius: f64, turn: f64| {
        let corner = |number: i32| {
            let angle = turn * PI * f64::from(number) / 2000.0;
            [x + radius * angle.cos(), y + radius * angle.sin()]
        };
        (0..4000).map(corner).collect::<Vec<_>>()
    };
    let lens = 2.0 * PI / 3.0 - 3.0_f64.sqrt() / 2.0;
    // Drawn one way and the other: overlapping outlines must not cancel.
    for turn in [1.0, -1.0] {
        let both = Region::of(&[disc(0.0, 0.0, 1.0, 1.0), disc(1.0, 0.0, 1.0, turn)]).unwrap();
        assert!(is_near(both.area(), 2.0 * PI - lens, 1e-5));
        let other = Region::of(&[disc(1.0, 0.0, 1.0, turn)]).unwrap();
        assert!(is_near(Region::of(&[disc(0.0, 0.0, 1.0, 1.0)]).unwrap().within(&other).area(), lens, 1e-5));
    }
    // On paper: a surface of 1000 × 1000, a square of 200 × 200 half over its edge, and one of 110 × 110 within it,
    // twice. 200 × 100 + 110 × 110 of a million: 3.21 %. Of the damage of 52,100, 20,000 lie outside: 38.388 %.
    let square = |x: f64, y: f64, side: f64| vec![[x, y], [x + side, y], [x + side, y + side], [x, y + side]];
    let marks = [
        mark(MarkUse::Surface, &square(1000.0, 1000.0, 1000.0)),
        mark(MarkUse::Damage, &square(900.0, 1200.0, 200.0)),
        mark(MarkUse::Damage, &square(1500.0, 1500.0, 110.0)),
        mark(MarkUse::Damage, &square(1500.0, 1500.0, 110.0)),
    ];
    let shares = shares(&plane(&marks).unwrap(), &marks).unwrap();
    assert_eq!(shares.len(), 1);
    assert!(is_near(shares[0].grades.share_percent, 3.21, 1e-4), "{}", shares[0].grades.share_percent);
    assert!(is_near(shares[0].outside_percent, 38.388, 1e-4));
    // ASTM D610-08, table 1: over 3 to 10 % is grade 4. ISO 4628-3: 8 % is the picture of Ri 4.
    assert_eq!((shares[0].grades.d610, shares[0].grades.ri), (4, 4));
}

fn any_share(chance: &mut Chance) -> f32 {
    match chance.below(30) {
        0 => f32::NAN,
        1 => f32::INFINITY,
        2 => -0.0,
        3 => f32::MIN_POSITIVE,
        4 => 1.0 + f32::EPSILON,
        5..12 => chance.below(5) as f32 / 4.0,
        _ => chance.below(1 << 20) as f32 / (1 << 20) as f32,
    }
}

/// Any points at all are measured or refused, every answer is a number, and a share is one.
#[test]
fn fuzz_marks() {
    let mut chance = Chance(0x00C0_FFEE);
    let (mut told, mut refused) = (0, 0);
    for _ in 0..rounds() / 20 {
        let marks: Vec<PhotoMark> = (0..chance.below(7))
            .map(|_| {
                let role = MarkUse::ALL[chance.below(MarkUse::ALL.len())];
                let most = if chance.below(50) == 0 { 60 } else { 7 };
                let fair = chance.below(3) > 0;
                let points = (0..chance.below(most))
                    .map(|_| {
                        let mut one = || {
                            let share = any_share(&mut chance);
                            if fair && !(0.0..=1.0).contains(&share) { 0.5 } else { share }
                        };
                        [one(), one()]
                    })
                    .collect();
                let mm = |chance: &mut Chance| match chance.below(6) {
                    0 => None,
                    1 => Some(f64::NAN),
                    2 => Some(0.0),
                    _ => Some(chance.below(1000) as f64 / 10.0),
                };
                PhotoMark {
                    length_mm: mm(&mut chance),
                    breadth_mm: mm(&mut chance),
                    ..PhotoMark::new(Store::new_id(), Store::new_id(), role, points)
                }
            })
            .collect();
        let photo = crate::marked::photo((chance.below(5000) as u32, chance.below(5000) as u32), marks);
        let measured = Measured::of(&photo, None);
        assert_eq!(measured.lines.len(), photo.marks.len());
        for line in &measured.lines {
            let said = measured.said(line, &photo);
            match &line.figure {
                Ok(_) => told += 1,
                Err(_) => refused += 1,
            }
            let words = [said.figures, said.heeds].concat().join(" ");
            assert!(!words.contains("NaN") && !words.contains("inf "), "{words}: {photo:?}");
        }
        for share in measured.shares.iter().flatten() {
            assert!((0.0..=100.0).contains(&share.share.grades.share_percent), "{photo:?}");
        }
    }
    assert!(told > refused / 10 && refused > told / 10, "{told} told, {refused} refused");
}

/// Ten thousand points: round a thing they are measured, all over the picture they are refused.
#[test]
fn ten_thousand_points_are_measured_or_refused_but_not_pondered() {
    let mut chance = Chance(4711);
    let mut anywhere = || [chance.below(4000) as f64, chance.below(3000) as f64];
    let tangle: Vec<Point> = (0..10_000).map(|_| anywhere()).collect();
    assert_eq!(Region::of(&[tangle]), Err(MeasureError::Tangled));
    let comb: Vec<Point> =
        (0..10_000).map(|at| [f64::from(at) / 4.0, if at % 2 == 0 { 100.0 } else { 2000.0 }]).collect();
    assert!(Region::of(&[comb]).is_ok());
    assert_eq!(Region::of(&[vec![[5.0, 5.0]; 10_000]]).unwrap().area(), 0.0);
}

proptest! {
    /// What damage there is within a surface is never more than either, in whatever plane.
    #[test]
    fn a_part_is_never_more_than_the_whole(
        surface in prop::collection::vec((0.0..1000.0f64, 0.0..1000.0f64), 3..12),
        damage in prop::collection::vec((0.0..1000.0f64, 0.0..1000.0f64), 3..12),
    ) {
        let region = |points: &[(f64, f64)]| Region::of(&[points.iter().map(|(x, y)| [*x, *y]).collect()]).unwrap();
        let (surface, damage) = (region(&surface), region(&damage));
        let common = surface.within(&damage).area();
        prop_assert!(common <= surface.area() * (1.0 + 1e-9) && common <= damage.area() * (1.0 + 1e-9));
        prop_assert!((common - damage.within(&surface).area()).abs() < 1e-3);
    }
}
