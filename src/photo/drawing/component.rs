//! What sits on boards: chips, capacitors, sockets, slots, cells; and what time does to them.

use super::canvas::{Area, Canvas, Ink, faint, ink, mix, shade};

pub const GOLD: Ink = ink(214, 178, 92);
pub const TIN: Ink = ink(186, 190, 192);
pub const PLASTIC: Ink = ink(38, 38, 40);
pub const PRINT: Ink = ink(232, 232, 222);
pub const STEEL: Ink = ink(176, 180, 182);

/// The colour of a board's lacquer.
pub fn mask(name: &str) -> Ink {
    match name {
        "dark" => ink(24, 66, 48),
        "brown" => ink(126, 92, 46),
        "blue" => ink(28, 62, 118),
        _ => ink(38, 104, 62),
    }
}

impl Canvas {
    /// A chip with legs on two sides, or on four when it is square.
    pub fn chip(&mut self, area: Area, text: &str) {
        let square = (area.w - area.h).abs() < area.w.min(area.h) * 0.25;
        let pitch = 7.0;
        for index in 0..(area.w / pitch) as u32 {
            let x = area.x + 3.0 + index as f32 * pitch;
            self.rect(Area::new(x, area.y - 3.0, 3.0, area.h + 6.0), TIN);
        }
        if square {
            for index in 0..(area.h / pitch) as u32 {
                let y = area.y + 3.0 + index as f32 * pitch;
                self.rect(Area::new(area.x - 3.0, y, area.w + 6.0, 3.0), TIN);
            }
        }
        self.lit(area, 2.0, ink(58, 58, 62), ink(30, 30, 33));
        self.disc(area.x + 6.0, area.y + area.h - 6.0, 2.2, ink(80, 80, 84));
        self.print_into(text, area.inner(5.0), 1.6, ink(190, 190, 184));
    }

    /// A capacitor's can from above: its sleeve, its lid, the vent, the stripe that marks minus.
    pub fn can(&mut self, x: f32, y: f32, radius: f32, sleeve: Ink, domed: bool) {
        self.disc(x + 2.0, y + 3.0, radius + 1.0, [0, 0, 0, 70]);
        self.disc(x, y, radius, sleeve);
        self.line(&[(x + radius * 0.86, y - radius * 0.35), (x + radius * 0.86, y + radius * 0.35)], 2.2, PRINT);
        self.disc(x, y, radius * 0.76, ink(196, 199, 202));
        self.glow(x - radius * 0.25, y - radius * 0.3, radius * 0.6, [255, 255, 255, 150]);
        let vent = radius * 0.5;
        let groove = ink(140, 143, 147);
        self.line(&[(x - vent, y - vent), (x + vent, y + vent)], 1.2, groove);
        self.line(&[(x - vent, y + vent), (x + vent, y - vent)], 1.2, groove);
        if domed {
            self.glow(x, y, radius * 0.7, [255, 255, 250, 190]);
            self.glow(x + radius * 0.1, y + radius * 0.15, radius * 0.55, [126, 74, 28, 235]);
        }
    }

    /// A bead of tantalum.
    pub fn bead(&mut self, x: f32, y: f32) {
        self.disc(x + 1.0, y + 2.0, 7.0, [0, 0, 0, 70]);
        self.disc(x, y, 6.5, ink(204, 150, 52));
        self.glow(x - 2.0, y - 2.0, 4.0, [255, 240, 200, 170]);
    }

    /// A slot seen from above, standing up along the board.
    pub fn slot(&mut self, kind: &str, x: f32, top: f32, length: f32) {
        let (body, from, to) = match kind {
            "pci" => (ink(232, 230, 220), 0.0, 0.62),
            "agp" => (ink(112, 68, 42), 0.12, 0.62),
            "vlb" => (ink(126, 78, 46), 0.0, 0.98),
            _ => (PLASTIC, 0.0, 0.96),
        };
        let area = Area::new(x, top + length * from, 17.0, length * (to - from));
        self.slab(Area::new(area.x + 2.0, area.y + 3.0, area.w, area.h), 2.0, [0, 0, 0, 60]);
        if kind == "vlb" {
            self.slab(Area::new(area.x, area.y, area.w, area.h * 0.66), 2.0, PLASTIC);
            self.slab(Area::new(area.x, area.y + area.h * 0.69, area.w, area.h * 0.31), 2.0, body);
        } else if kind == "isa" {
            self.slab(Area::new(area.x, area.y, area.w, area.h * 0.64), 2.0, body);
            self.slab(Area::new(area.x, area.y + area.h * 0.67, area.w, area.h * 0.33), 2.0, body);
        } else {
            self.slab(area, 2.0, body);
        }
        self.rect(Area::new(area.x + 7.0, area.y + 6.0, 3.0, area.h - 12.0), shade(body, -0.55));
        for index in 0..(area.h / 9.0) as u32 - 1 {
            let y = area.y + 8.0 + index as f32 * 9.0;
            self.rect(Area::new(area.x + 4.5, y, 8.0, 1.6), faint(GOLD, 170));
        }
    }

    /// A memory socket lying across, clips at its ends.
    pub fn memory_socket(&mut self, area: Area) {
        self.slab(area, 2.0, ink(228, 225, 214));
        self.rect(Area::new(area.x + 6.0, area.y + area.h * 0.4, area.w - 12.0, 2.5), ink(120, 116, 106));
        for x in [area.x - 3.0, area.x + area.w - 4.0] {
            self.slab(Area::new(x, area.y - 2.0, 7.0, area.h + 4.0), 1.5, TIN);
        }
    }

    /// A square processor socket with its lever, and the processor in it when it has a print.
    pub fn square_socket(&mut self, area: Area, processor: &str) {
        self.slab(area, 3.0, ink(236, 233, 222));
        let pitch = area.w / 20.0;
        for row in 1..19_u8 {
            for column in 1..19_u8 {
                let in_middle = (6..13).contains(&row) && (6..13).contains(&column);
                if !in_middle {
                    let (x, y) = (area.x + f32::from(column) * pitch, area.y + f32::from(row) * pitch);
                    self.disc(x + pitch / 2.0, y + pitch / 2.0, 1.5, ink(122, 112, 84));
                }
            }
        }
        self.line(&[(area.x + area.w + 5.0, area.y), (area.x + area.w + 5.0, area.y + area.h)], 3.0, STEEL);
        if !processor.is_empty() {
            self.ceramic(area.inner(7.0), processor);
        }
    }

    /// A processor's ceramic body with its gilt lid.
    pub fn ceramic(&mut self, area: Area, text: &str) {
        self.slab(Area::new(area.x + 2.0, area.y + 3.0, area.w, area.h), 3.0, [0, 0, 0, 80]);
        self.lit(area, 3.0, ink(110, 100, 112), ink(78, 70, 80));
        let lid = area.part(0.24, 0.24, 0.52, 0.52);
        self.lit(lid, 2.0, ink(236, 210, 130), ink(186, 150, 74));
        self.print_into(text, area.part(0.08, 0.06, 0.84, 0.14), 3.0, PRINT);
        let (x, y) = area.at(0.06, 0.94);
        self.disc(x, y, 3.0, GOLD);
    }

    /// A row of pins in a shroud: disk and floppy headers.
    pub fn header(&mut self, area: Area) {
        self.slab(area, 1.5, PLASTIC);
        for index in 0..(area.w / 8.0) as u32 {
            let x = area.x + 4.0 + index as f32 * 8.0;
            self.disc(x, area.y + area.h * 0.33, 1.4, GOLD);
            self.disc(x, area.y + area.h * 0.67, 1.4, GOLD);
        }
    }

    /// What keeps the clock running: barrel, coin, module, or the legs of a cell that was cut out.
    pub fn cell(&mut self, kind: &str, x: f32, y: f32) {
        match kind {
            "barrel" => {
                let body = Area::new(x - 44.0, y - 17.0, 88.0, 34.0);
                self.slab(Area::new(body.x + 3.0, body.y + 5.0, body.w, body.h), 8.0, [0, 0, 0, 80]);
                self.lit(body, 8.0, ink(96, 132, 190), ink(36, 62, 112));
                for split in [0.33, 0.66] {
                    let (line, _) = body.at(split, 0.0);
                    self.line(&[(line, body.y + 2.0), (line, body.y + body.h - 2.0)], 1.5, ink(30, 48, 84));
                }
                self.print_into("3.6V 60MAH", body.part(0.1, 0.25, 0.8, 0.5), 1.4, PRINT);
            }
            "coin" => {
                self.disc(x, y, 30.0, PLASTIC);
                self.disc(x, y, 26.0, ink(202, 204, 205));
                self.glow(x - 8.0, y - 9.0, 18.0, [255, 255, 255, 180]);
                self.print("+", x - 5.0, y - 7.0, 2.0, ink(130, 132, 134));
            }
            "module" => {
                self.lit(Area::new(x - 24.0, y - 38.0, 48.0, 76.0), 3.0, ink(62, 62, 66), ink(26, 26, 29));
                self.print_into("CLOCK", Area::new(x - 20.0, y - 12.0, 40.0, 24.0), 1.4, PRINT);
            }
            "cut" => {
                for leg in [x - 36.0, x + 36.0] {
                    self.disc(leg, y, 5.0, TIN);
                    self.disc(leg, y, 2.0, ink(96, 98, 100));
                }
                self.glow(x, y, 46.0, [214, 222, 206, 70]);
            }
            _ => {}
        }
    }

    /// Blue-green salts that crept out of a leaked cell.
    pub fn crust(&mut self, x: f32, y: f32, reach: f32, dice: &mut fastrand::Rng) {
        self.glow(x, y, reach * 1.3, [92, 120, 84, 130]);
        for _ in 0..150 {
            let (angle, far) = (dice.f32() * std::f32::consts::TAU, dice.f32().powf(0.7) * reach);
            let (spot_x, spot_y) = (x + angle.cos() * far, y + angle.sin() * far * 0.8);
            let salt = mix(ink(72, 172, 150), ink(222, 240, 226), dice.f32());
            self.disc(spot_x, spot_y, 1.0 + dice.f32() * 4.0 * (1.2 - far / reach), faint(salt, 170));
        }
    }

    /// Rust on steel.
    pub fn rust(&mut self, x: f32, y: f32, reach: f32, dice: &mut fastrand::Rng) {
        for _ in 0..170 {
            let (angle, far) = (dice.f32() * std::f32::consts::TAU, dice.f32().sqrt() * reach);
            let brown = mix(ink(150, 72, 28), ink(92, 46, 24), dice.f32());
            self.disc(x + angle.cos() * far, y + angle.sin() * far, 1.0 + dice.f32() * 4.5, faint(brown, 120));
        }
    }

    /// A place that got too hot.
    pub fn burn(&mut self, x: f32, y: f32, reach: f32) {
        self.glow(x, y, reach * 1.4, [70, 44, 16, 190]);
        self.glow(x, y, reach * 0.8, [12, 9, 7, 250]);
    }
}
