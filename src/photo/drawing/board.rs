//! Mainboards, cards and modules from above.

use super::canvas::{Area, Canvas, HEIGHT, Ink, WIDTH, faint, ink, shade};
use super::component::{GOLD, PLASTIC, PRINT, STEEL, TIN, mask};
use crate::store::sample::Subject;

/// Sleeves of capacitors: those of one board are alike, a replaced one stands out.
const SLEEVES: [Ink; 4] = [ink(30, 40, 82), ink(28, 28, 32), ink(58, 34, 26), ink(24, 66, 54)];
const FRESH_SLEEVE: Ink = ink(156, 126, 34);

/// Tracks that run side by side, turn by 45° and go on.
fn tracks(canvas: &mut Canvas, area: Area, lacquer: Ink, bundles: u32, dice: &mut fastrand::Rng) {
    let copper = faint(shade(lacquer, 0.22), 150);
    for _ in 0..bundles {
        let (mut x, mut y) = area.at(dice.f32() * 0.8, dice.f32() * 0.9);
        let (run, rise, more) = (30.0 + dice.f32() * 150.0, 10.0 + dice.f32() * 50.0, 30.0 + dice.f32() * 120.0);
        let up = if dice.bool() { 1.0 } else { -1.0 };
        for _ in 0..dice.u8(3..8) {
            let turn = (x + run, y);
            let points =
                [(x, y), turn, (turn.0 + rise, turn.1 + rise * up), (turn.0 + rise + more, turn.1 + rise * up)];
            let keep = |&(px, py): &(f32, f32)| {
                (area.x + 6.0..area.x + area.w - 6.0).contains(&px)
                    && (area.y + 6.0..area.y + area.h - 6.0).contains(&py)
            };
            let inside: Vec<_> = points.iter().take_while(|point| keep(point)).copied().collect();
            canvas.line(&inside, 1.3, copper);
            if let Some(&(end_x, end_y)) = inside.last() {
                canvas.disc(end_x, end_y, 2.4, faint(GOLD, 130));
            }
            x += 1.5;
            y += 4.5;
        }
    }
}

fn blank(canvas: &mut Canvas, area: Area, lacquer: Ink, bundles: u32, dice: &mut fastrand::Rng) {
    canvas.shadow(area, 4.0);
    canvas.lit(area, 4.0, shade(lacquer, 0.1), shade(lacquer, -0.12));
    tracks(canvas, area, lacquer, bundles, dice);
}

fn time_and_wear(canvas: &mut Canvas, subject: &Subject, dice: &mut fastrand::Rng) {
    let place = |[x, y, reach]: [f32; 3]| (x * WIDTH, y * HEIGHT, reach * WIDTH);
    if let Some((x, y, reach)) = subject.crust.map(place) {
        canvas.crust(x, y, reach, dice);
    }
    if let Some((x, y, reach)) = subject.burn.map(place) {
        canvas.burn(x, y, reach);
    }
    if let Some((x, y, reach)) = subject.rust.map(place) {
        canvas.rust(x, y, reach, dice);
    }
}

/// Cans at given places: the first ones domed, the last ones new.
fn cans(canvas: &mut Canvas, places: &[(f32, f32)], radius: f32, subject: &Subject, dice: &mut fastrand::Rng) {
    let sleeve = SLEEVES[dice.usize(..SLEEVES.len())];
    let count = (subject.cans as usize).min(places.len());
    for (index, &(x, y)) in places.iter().take(count).enumerate() {
        let fresh = index + subject.fresh as usize >= count;
        canvas.can(x, y, radius, if fresh { FRESH_SLEEVE } else { sleeve }, index < subject.domed as usize);
    }
}

pub fn mainboard(canvas: &mut Canvas, subject: &Subject, dice: &mut fastrand::Rng) {
    let area = Area::new(60.0, 40.0, 680.0, 520.0);
    let lacquer = mask(&subject.mask);
    blank(canvas, area, lacquer, 34, dice);
    for (across, down) in [(0.02, 0.03), (0.98, 0.03), (0.02, 0.97), (0.98, 0.97), (0.5, 0.97)] {
        let (x, y) = area.at(across, down);
        canvas.disc(x, y, 8.0, TIN);
        canvas.disc(x, y, 5.0, ink(44, 58, 52));
    }
    // Ports along the upper edge.
    for (left, width) in [(0.62, 0.07), (0.70, 0.09), (0.80, 0.12)] {
        let port = Area::new(area.x + area.w * left, area.y - 10.0, area.w * width, 36.0);
        canvas.lit(port, 2.0, shade(STEEL, 0.2), shade(STEEL, -0.2));
    }
    for (index, kind) in subject.slots.iter().enumerate() {
        canvas.slot(kind, area.x + 24.0 + index as f32 * 38.0, area.y + 24.0, 310.0);
    }
    let right = (subject.slots.len() as f32 * 38.0 + 40.0).max(170.0);
    let free = Area::new(area.x + right, area.y + 36.0, area.w - right - 16.0, area.h - 50.0);
    for index in 0..14 {
        let (x, y) = free.at(dice.f32(), 0.02 + dice.f32() * 0.95);
        if index % 3 == 0 { canvas.bead(x, y) } else { canvas.slab(Area::new(x, y, 9.0, 5.0), 1.0, ink(176, 150, 112)) }
    }
    let socket = match subject.processor.as_str() {
        "slot" => {
            let slot = Area::new(free.x + free.w * 0.30, free.y + 30.0, 22.0, 300.0);
            canvas.slab(slot, 2.0, ink(74, 48, 34));
            canvas.rect(Area::new(slot.x + 9.0, slot.y + 8.0, 4.0, slot.h - 16.0), ink(24, 16, 12));
            for y in [slot.y - 16.0, slot.y + slot.h] {
                canvas.slab(Area::new(slot.x - 8.0, y, 38.0, 18.0), 3.0, PLASTIC);
            }
            slot
        }
        "none" => Area::new(free.x + free.w * 0.3, free.y + 60.0, 0.0, 150.0),
        _ => {
            let side = 150.0_f32.min(free.w * 0.45);
            let socket = Area::new(free.x + free.w * 0.30, free.y + 150.0, side, side);
            canvas.square_socket(socket, subject.lines.first().map_or("", String::as_str));
            socket
        }
    };
    let banks = subject.memory.max(1) as f32;
    let pitch = (150.0 / banks).clamp(17.0, 30.0);
    for index in 0..subject.memory {
        let y = area.y + area.h - 30.0 - (index + 1) as f32 * pitch;
        canvas.memory_socket(Area::new(free.x + free.w * 0.34, y, free.w * 0.62, 12.0));
    }
    for (index, width) in [150.0, 130.0].into_iter().enumerate() {
        canvas.header(Area::new(area.x + 30.0 + index as f32 * 175.0, area.y + area.h - 46.0, width, 20.0));
    }
    canvas.slab(Area::new(area.x + area.w - 36.0, free.y + 90.0, 24.0, 130.0), 3.0, ink(236, 232, 220));
    let chip_places =
        [(0.05, 0.72, 86.0, 86.0), (0.24, 0.72, 86.0, 86.0), (0.03, 0.865, 70.0, 26.0), (0.17, 0.865, 70.0, 26.0)];
    let prints = ["LR8215", "LR8218", "TMK 4256", "QX 74F245"];
    for (index, (across, down, w, h)) in chip_places.into_iter().take(subject.chips as usize).enumerate() {
        let (x, y) = area.at(across, down);
        let lift = if h > 50.0 { 30.0 } else { 10.0 };
        canvas.chip(Area::new(x, y - lift, w, h), prints[index]);
    }
    let around: Vec<_> = (0..6)
        .map(|index| (socket.x - 22.0, socket.y + 8.0 + index as f32 * 30.0))
        .chain((0..6).map(|index| (socket.x + socket.w + 34.0, socket.y + 8.0 + index as f32 * 30.0)))
        .chain((0..8).map(|index| (free.x + 20.0 + index as f32 * 30.0, free.y + 18.0)))
        .collect();
    cans(canvas, &around, 11.5, subject, dice);
    let (x, y) = free.at(0.80, 0.10);
    canvas.cell(&subject.cell, x.min(area.x + area.w - 70.0), y + 24.0);
    // The print stands between slots and socket, clear of what is soldered there.
    let reach = if subject.processor == "slot" { 0.26 } else { 0.50 };
    let print = Area::new(free.x + 8.0, free.y + 38.0, free.w * reach, 20.0);
    canvas.print_into(&subject.title, print, 2.4, PRINT);
    for (index, line) in subject.lines.iter().skip(1).enumerate() {
        canvas.print_into(line, Area::new(print.x, print.y + 24.0 + index as f32 * 14.0, print.w, 11.0), 1.4, PRINT);
    }
    time_and_wear(canvas, subject, dice);
}

pub fn card(canvas: &mut Canvas, subject: &Subject, dice: &mut fastrand::Rng) {
    let area = Area::new(110.0, 130.0, 600.0, 290.0);
    let lacquer = mask(&subject.mask);
    // The bracket, then the board, then its contacts.
    let bracket = Area::new(area.x - 34.0, area.y - 34.0, 30.0, area.h + 84.0);
    canvas.shadow(bracket, 2.0);
    canvas.lit(bracket, 2.0, shade(STEEL, 0.25), shade(STEEL, -0.15));
    blank(canvas, area, lacquer, 22, dice);
    let comb = Area::new(area.x + 90.0, area.y + area.h - 4.0, 390.0, 38.0);
    canvas.lit(comb, 2.0, shade(lacquer, 0.05), shade(lacquer, -0.15));
    for index in 0..43 {
        let x = comb.x + 6.0 + index as f32 * 9.0;
        if !(24..26).contains(&index) {
            canvas.rect(Area::new(x, comb.y + 4.0, 5.5, comb.h - 7.0), GOLD);
        }
    }
    for index in 0..3 {
        let port = Area::new(area.x - 18.0, area.y + 18.0 + index as f32 * 62.0, 56.0, 40.0);
        canvas.lit(port, 3.0, shade(STEEL, 0.1), shade(PLASTIC, 0.2));
    }
    let chips: [(f32, f32, f32, f32); 6] = [
        (0.34, 0.30, 118.0, 118.0),
        (0.66, 0.24, 96.0, 30.0),
        (0.66, 0.42, 96.0, 30.0),
        (0.14, 0.64, 84.0, 28.0),
        (0.66, 0.60, 96.0, 30.0),
        (0.82, 0.24, 96.0, 30.0),
    ];
    let prints = [
        subject.lines.first().map_or("QX 9100", String::as_str),
        "TMK 424256",
        "TMK 424256",
        "QX BIOS",
        "TMK 424256",
        "LR 244",
    ];
    for (index, (across, down, w, h)) in chips.into_iter().take(subject.chips as usize).enumerate() {
        let (x, y) = area.at(across, down);
        canvas.chip(Area::new(x, y, w.min(area.x + area.w - x - 8.0), h), prints[index]);
    }
    for _ in 0..12 {
        let (x, y) = area.at(0.14 + dice.f32() * 0.8, 0.05 + dice.f32() * 0.12);
        canvas.slab(Area::new(x, y, 9.0, 5.0), 1.0, ink(176, 150, 112));
    }
    let places: Vec<_> = (0..12).map(|index| (area.x + 76.0 + index as f32 * 40.0, area.y + area.h - 36.0)).collect();
    cans(canvas, &places, 11.0, subject, dice);
    canvas.print_into(&subject.title, Area::new(area.x + 76.0, area.y + 56.0, 380.0, 16.0), 2.0, PRINT);
    for (index, line) in subject.lines.iter().skip(1).enumerate() {
        canvas.print_into(line, Area::new(area.x + 72.0, area.y + 84.0 + index as f32 * 14.0, 120.0, 11.0), 1.4, PRINT);
    }
    time_and_wear(canvas, subject, dice);
}

pub fn module(canvas: &mut Canvas, subject: &Subject, dice: &mut fastrand::Rng) {
    let count = subject.memory.clamp(1, 4);
    for row in 0..count {
        let area = Area::new(110.0, 300.0 - count as f32 * 62.0 + row as f32 * 124.0, 580.0, 92.0);
        blank(canvas, area, mask(&subject.mask), 5, dice);
        for index in 0..56 {
            canvas.rect(Area::new(area.x + 12.0 + index as f32 * 10.0, area.y + 76.0, 6.0, 14.0), GOLD);
        }
        let chips = subject.chips.clamp(2, 9);
        let pitch = 540.0 / chips as f32;
        for index in 0..chips {
            let chip = Area::new(area.x + 22.0 + index as f32 * pitch, area.y + 16.0, pitch - 14.0, 40.0);
            canvas.chip(chip, subject.lines.first().map_or("TMK 4M4-60", String::as_str));
        }
        let sticker = Area::new(area.x + 210.0, area.y + 22.0, 160.0, 28.0);
        canvas.slab(sticker, 2.0, ink(244, 243, 236));
        canvas.print_into(&subject.title, sticker.inner(5.0), 1.8, ink(40, 40, 44));
    }
    time_and_wear(canvas, subject, dice);
}
