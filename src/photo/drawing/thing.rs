//! Drives, supplies, cases, monitors, keyboards, chips on their own and small things.

use super::canvas::{Area, Canvas, HEIGHT, Ink, WIDTH, faint, ink, mix, shade};
use super::component::{GOLD, PLASTIC, PRINT, STEEL, TIN};
use super::print::width_px;
use crate::store::sample::Subject;

const LABEL: Ink = ink(244, 242, 233);
const LETTERS: Ink = ink(44, 44, 50);

/// Beige plastic, the yellower the older.
fn beige(subject: &Subject) -> Ink {
    mix(ink(222, 217, 202), ink(206, 172, 98), subject.yellowed.clamp(0.0, 1.0))
}

fn label(canvas: &mut Canvas, area: Area, subject: &Subject) {
    canvas.slab(area, 3.0, LABEL);
    canvas.print_into(&subject.title, area.part(0.05, 0.06, 0.9, 0.24), 3.2, LETTERS);
    for (index, line) in subject.lines.iter().take(6).enumerate() {
        let (x, y) = area.at(0.06, 0.38 + index as f32 * 0.10);
        let dot_px = 1.5_f32.min(area.w * 0.88 / width_px(line, 1.0).max(1.0));
        canvas.print(line, x, y, dot_px, LETTERS);
    }
    for index in 0..26 {
        let wide = if index % 3 == 0 || index % 7 == 2 { 3.0 } else { 1.4 };
        let (x, y) = area.at(0.56, 0.86);
        canvas.rect(Area::new(x + index as f32 * 4.4, y, wide, area.h * 0.10), LETTERS);
    }
}

pub fn disk(canvas: &mut Canvas, subject: &Subject) {
    let area = Area::new(190.0, 60.0, 420.0, 480.0);
    canvas.shadow(area, 8.0);
    canvas.lit(area, 8.0, shade(STEEL, 0.2), shade(STEEL, -0.25));
    for (across, down) in [(0.05, 0.04), (0.95, 0.04), (0.05, 0.5), (0.95, 0.5), (0.05, 0.96), (0.95, 0.96)] {
        let (x, y) = area.at(across, down);
        canvas.disc(x, y, 8.0, shade(STEEL, -0.3));
        canvas.line(&[(x - 4.0, y), (x + 4.0, y)], 1.6, shade(STEEL, -0.6));
    }
    let (x, y) = area.at(0.5, 0.74);
    canvas.disc(x, y, 70.0, shade(STEEL, -0.08));
    canvas.disc(x, y, 24.0, shade(STEEL, 0.15));
    label(canvas, area.part(0.09, 0.09, 0.82, 0.44), subject);
    canvas.header(Area::new(area.x + 40.0, area.y + area.h - 14.0, 230.0, 20.0));
    canvas.slab(Area::new(area.x + 300.0, area.y + area.h - 16.0, 84.0, 24.0), 3.0, ink(238, 234, 222));
}

pub fn face(canvas: &mut Canvas, subject: &Subject) {
    let tall = subject.front.iter().any(|word| word == "floppy");
    let area = if tall { Area::new(200.0, 215.0, 400.0, 130.0) } else { Area::new(130.0, 205.0, 540.0, 160.0) };
    let plastic = beige(subject);
    canvas.shadow(area, 6.0);
    canvas.lit(area, 6.0, shade(plastic, 0.15), shade(plastic, -0.1));
    if tall {
        canvas.slab(area.part(0.08, 0.30, 0.84, 0.16), 4.0, PLASTIC);
        canvas.slab(area.part(0.76, 0.62, 0.14, 0.20), 3.0, shade(plastic, -0.15));
        canvas.slab(area.part(0.10, 0.68, 0.06, 0.08), 2.0, ink(92, 150, 60));
    } else {
        canvas.slab(area.part(0.05, 0.14, 0.90, 0.44), 4.0, shade(plastic, -0.08));
        canvas.line(&[area.at(0.06, 0.57), area.at(0.94, 0.57)], 2.0, shade(plastic, -0.5));
        canvas.slab(area.part(0.82, 0.70, 0.12, 0.14), 3.0, shade(plastic, -0.12));
        canvas.slab(area.part(0.70, 0.74, 0.05, 0.06), 2.0, ink(206, 132, 32));
        let (x, y) = area.at(0.10, 0.77);
        canvas.disc(x, y, 9.0, PLASTIC);
    }
    canvas.print_into(&subject.title, area.part(0.30, 0.66, 0.34, 0.16), 1.8, shade(plastic, -0.6));
}

pub fn supply(canvas: &mut Canvas, subject: &Subject, dice: &mut fastrand::Rng) {
    let area = Area::new(90.0, 120.0, 430.0, 360.0);
    for (index, lead) in
        [ink(196, 40, 36), ink(226, 190, 44), ink(34, 34, 36), ink(222, 120, 40)].into_iter().enumerate()
    {
        for strand in 0..3_u8 {
            let y = 200.0 + index as f32 * 46.0 + f32::from(strand) * 6.0;
            let sway = dice.f32() * 40.0;
            canvas.line(&[(515.0, y), (570.0, y + sway * 0.2), (640.0, y + sway), (700.0, y + sway + 8.0)], 4.5, lead);
        }
        canvas.slab(Area::new(690.0, 192.0 + index as f32 * 52.0, 46.0, 34.0), 3.0, ink(234, 230, 218));
    }
    canvas.shadow(area, 4.0);
    canvas.lit(area, 4.0, shade(STEEL, 0.15), shade(STEEL, -0.2));
    for index in 0..11 {
        canvas.slab(Area::new(area.x + 24.0 + index as f32 * 12.0, area.y + 24.0, 6.0, 120.0), 3.0, ink(54, 56, 58));
    }
    let (x, y) = area.at(0.20, 0.72);
    canvas.disc(x, y, 66.0, ink(48, 50, 52));
    for blade in 0..7_u8 {
        let angle = f32::from(blade) / 7.0 * std::f32::consts::TAU;
        canvas.line(&[(x, y), (x + angle.cos() * 54.0, y + angle.sin() * 54.0)], 15.0, ink(24, 24, 26));
    }
    canvas.disc(x, y, 22.0, ink(64, 66, 70));
    for ring in [34.0, 50.0, 64.0] {
        let points: Vec<_> = (0..=40_u8)
            .map(|step| f32::from(step) / 40.0 * std::f32::consts::TAU)
            .map(|angle| (x + angle.cos() * ring, y + angle.sin() * ring))
            .collect();
        canvas.line(&points, 2.0, TIN);
    }
    label(canvas, area.part(0.42, 0.10, 0.53, 0.80), subject);
    if let Some([x, y, reach]) = subject.burn {
        canvas.burn(x * WIDTH, y * HEIGHT, reach * WIDTH);
    }
    if let Some([x, y, reach]) = subject.rust {
        canvas.rust(x * WIDTH, y * HEIGHT, reach * WIDTH, dice);
    }
}

pub fn case(canvas: &mut Canvas, subject: &Subject, standing: bool, dice: &mut fastrand::Rng) {
    let area = if standing { Area::new(265.0, 30.0, 270.0, 540.0) } else { Area::new(70.0, 190.0, 660.0, 220.0) };
    let plastic = beige(subject);
    canvas.shadow(area, 8.0);
    canvas.lit(area, 8.0, shade(plastic, 0.14), shade(plastic, -0.14));
    let plates = subject.front.len() as f32;
    for (index, plate) in subject.front.iter().enumerate() {
        let bay = if standing {
            Area::new(area.x + 22.0, area.y + 26.0 + index as f32 * 66.0, area.w - 44.0, 58.0)
        } else {
            Area::new(
                area.x + area.w * 0.52,
                area.y + 18.0 + index as f32 * (176.0 / plates.max(2.0)),
                area.w * 0.44,
                160.0 / plates.max(2.0),
            )
        };
        let plate_ink = match plate.as_str() {
            "missing" => ink(40, 40, 42),
            "pale" => beige(&Subject { yellowed: 0.0, ..Subject::default() }),
            _ => shade(plastic, -0.05),
        };
        canvas.slab(bay, 3.0, plate_ink);
        match plate.as_str() {
            "floppy" => canvas.slab(bay.part(0.2, 0.36, 0.6, 0.16), 3.0, PLASTIC),
            "optical" => canvas.line(&[bay.at(0.05, 0.62), bay.at(0.95, 0.62)], 2.0, shade(plastic, -0.5)),
            _ => {}
        }
    }
    let low = if standing { area.part(0.08, 0.60, 0.84, 0.34) } else { area.part(0.04, 0.10, 0.42, 0.80) };
    let grooves = if standing { 14 } else { 12 };
    for index in 0..grooves {
        let y = low.y + low.h * (0.45 + 0.55 * index as f32 / grooves as f32);
        canvas.line(&[(low.x, y), (low.x + low.w, y)], 2.0, shade(plastic, -0.22));
    }
    let display = low.part(0.06, 0.02, 0.28, 0.26);
    canvas.slab(display, 3.0, ink(34, 26, 26));
    canvas.print_into(subject.lines.first().map_or("66", String::as_str), display.inner(6.0), 4.0, ink(236, 74, 50));
    for (index, lamp) in [ink(84, 196, 84), ink(230, 150, 40), ink(200, 60, 48)].into_iter().enumerate() {
        canvas.slab(Area::new(low.x + low.w * 0.42 + index as f32 * 20.0, low.y + 12.0, 11.0, 6.0), 2.0, lamp);
    }
    let button = low.part(0.76, 0.02, 0.2, 0.2);
    canvas.lit(button, 5.0, shade(plastic, 0.1), shade(plastic, -0.2));
    canvas.print_into(&subject.title, low.part(0.06, 0.32, 0.6, 0.08), 2.0, shade(plastic, -0.6));
    if let Some([x, y, reach]) = subject.rust {
        canvas.rust(x * WIDTH, y * HEIGHT, reach * WIDTH, dice);
    }
}

pub fn keyboard(canvas: &mut Canvas, subject: &Subject, dice: &mut fastrand::Rng) {
    let area = Area::new(40.0, 180.0, 720.0, 240.0);
    let plastic = beige(subject);
    canvas.shadow(area, 10.0);
    canvas.lit(area, 10.0, shade(plastic, 0.1), shade(plastic, -0.12));
    for row in 0..6_u8 {
        let y = area.y + 24.0 + f32::from(row) * 33.0 + if row > 0 { 8.0 } else { 0.0 };
        let mut x = area.x + 20.0;
        while x < area.x + area.w - 46.0 {
            let wide = match dice.u8(..12) {
                0 if row > 1 => 52.0,
                _ => 29.0,
            };
            let wide = if row == 5 && (180.0..210.0).contains(&(x - area.x)) { 200.0 } else { wide };
            let key = Area::new(x, y, f32::min(wide, area.x + area.w - 20.0 - x), 28.0);
            let cap = if wide > 40.0 { shade(plastic, -0.14) } else { shade(plastic, 0.22) };
            canvas.slab(key, 4.0, shade(cap, -0.3));
            canvas.lit(Area::new(key.x + 2.5, key.y + 1.0, key.w - 5.0, key.h - 6.0), 4.0, shade(cap, 0.2), cap);
            x += wide + 4.0;
        }
    }
}

pub fn monitor(canvas: &mut Canvas, subject: &Subject) {
    let area = Area::new(150.0, 30.0, 500.0, 440.0);
    let plastic = beige(subject);
    let foot = Area::new(270.0, 480.0, 260.0, 60.0);
    canvas.shadow(foot, 20.0);
    canvas.lit(foot, 20.0, plastic, shade(plastic, -0.3));
    canvas.shadow(area, 18.0);
    canvas.lit(area, 18.0, shade(plastic, 0.14), shade(plastic, -0.14));
    let glass = area.part(0.08, 0.08, 0.84, 0.74);
    canvas.slab(glass, 26.0, ink(30, 32, 32));
    let tube = glass.inner(12.0);
    canvas.lit(tube, 24.0, ink(70, 80, 80), ink(34, 42, 42));
    let (x, y) = tube.at(0.28, 0.24);
    canvas.glow(x, y, 110.0, [220, 232, 236, 90]);
    canvas.print_into(&subject.title, area.part(0.08, 0.86, 0.3, 0.06), 2.0, shade(plastic, -0.6));
    let (x, y) = area.at(0.90, 0.90);
    canvas.disc(x, y, 11.0, shade(plastic, -0.2));
    canvas.disc(x - 40.0, y, 4.0, ink(84, 196, 84));
}

pub fn cartridge(canvas: &mut Canvas, subject: &Subject) {
    let area = Area::new(110.0, 180.0, 580.0, 230.0);
    canvas.shadow(area, 10.0);
    canvas.lit(area, 10.0, ink(66, 66, 70), ink(28, 28, 31));
    for index in 0..58 {
        canvas.rect(Area::new(area.x + 54.0 + index as f32 * 8.0, area.y + area.h, 5.0, 22.0), GOLD);
    }
    let badge = area.part(0.06, 0.14, 0.56, 0.5);
    canvas.lit(badge, 4.0, ink(70, 92, 130), ink(34, 48, 82));
    canvas.print_into(&subject.title, badge.inner(18.0), 4.0, PRINT);
    label(canvas, area.part(0.66, 0.12, 0.30, 0.72), subject);
}

pub fn chip(canvas: &mut Canvas, subject: &Subject) {
    let area = Area::new(270.0, 170.0, 260.0, 260.0);
    canvas.shadow(area, 6.0);
    for index in 0..17 {
        let along = 8.0 + index as f32 * 15.0;
        canvas.disc(area.x + along, area.y - 2.0, 3.0, GOLD);
        canvas.disc(area.x + along, area.y + area.h + 2.0, 3.0, GOLD);
    }
    canvas.ceramic(area, &subject.title);
    for (index, line) in subject.lines.iter().take(3).enumerate() {
        canvas.print_into(line, area.part(0.27, 0.33 + index as f32 * 0.12, 0.46, 0.07), 1.7, ink(92, 72, 30));
    }
}

pub fn small(canvas: &mut Canvas, subject: &Subject, dice: &mut fastrand::Rng) {
    match subject.front.first().map_or("", String::as_str) {
        "posts" => {
            for x in [200.0, 480.0] {
                let post = Area::new(x, 130.0, 70.0, 320.0);
                canvas.shadow(post, 8.0);
                canvas.lit(post, 8.0, ink(60, 60, 64), ink(24, 24, 27));
                canvas.slab(post.part(0.36, 0.05, 0.28, 0.9), 4.0, ink(14, 14, 16));
                canvas.disc(post.x + 35.0, post.y + 340.0, 12.0, TIN);
            }
        }
        "ribbon" => {
            for strand in 0..40_u8 {
                let y = 230.0 + f32::from(strand) * 3.6;
                let grey = if strand == 0 { ink(190, 40, 40) } else { ink(190, 190, 186) };
                canvas.line(&[(90.0, y), (330.0, y - 30.0), (470.0, y + 24.0), (710.0, y)], 3.0, grey);
            }
            for x in [70.0, 380.0, 690.0] {
                canvas.lit(Area::new(x, 220.0, 34.0, 164.0), 3.0, ink(64, 64, 68), ink(26, 26, 29));
            }
        }
        "clock" => {
            canvas.shadow(Area::new(300.0, 220.0, 200.0, 120.0), 4.0);
            for index in 0..12 {
                canvas.rect(Area::new(312.0 + index as f32 * 15.4, 210.0, 5.0, 142.0), TIN);
            }
            canvas.lit(Area::new(300.0, 220.0, 200.0, 120.0), 4.0, ink(64, 64, 68), ink(24, 24, 27));
            canvas.print_into(&subject.title, Area::new(316.0, 236.0, 168.0, 40.0), 2.6, PRINT);
            canvas.print_into(
                subject.lines.first().map_or("", String::as_str),
                Area::new(316.0, 290.0, 168.0, 24.0),
                2.0,
                PRINT,
            );
        }
        "disc" => {
            canvas.shadow(Area::new(220.0, 120.0, 360.0, 360.0), 180.0);
            canvas.disc(400.0, 300.0, 180.0, ink(206, 210, 216));
            canvas.glow(330.0, 220.0, 150.0, [190, 220, 255, 150]);
            canvas.glow(480.0, 380.0, 120.0, [255, 206, 226, 120]);
            canvas.print_into(&subject.title, Area::new(290.0, 170.0, 220.0, 30.0), 2.6, LETTERS);
            canvas.disc(400.0, 300.0, 26.0, ink(62, 92, 82));
        }
        _ => {
            let area = Area::new(270.0, 150.0, 260.0, 260.0);
            canvas.shadow(area, 6.0);
            canvas.lit(area, 6.0, ink(150, 152, 156), ink(92, 94, 98));
            for index in 0..12 {
                canvas.rect(
                    Area::new(area.x + 10.0 + index as f32 * 20.0, area.y + 8.0, 8.0, area.h - 16.0),
                    ink(58, 60, 62),
                );
            }
            canvas.disc(400.0, 280.0, 96.0, ink(30, 30, 32));
            let start = dice.f32();
            for blade in 0..7_u8 {
                let angle = start + f32::from(blade) / 7.0 * std::f32::consts::TAU;
                canvas.line(
                    &[(400.0, 280.0), (400.0 + angle.cos() * 80.0, 280.0 + angle.sin() * 80.0)],
                    24.0,
                    ink(52, 52, 55),
                );
            }
            canvas.disc(400.0, 280.0, 36.0, faint(LABEL, 255));
            canvas.print_into(&subject.title, Area::new(372.0, 270.0, 56.0, 20.0), 1.4, LETTERS);
        }
    }
}
