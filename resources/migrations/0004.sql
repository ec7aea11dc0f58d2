-- Capacitors: what a position is for, a design's own positions, capacitors in stock, and kits.

ALTER TABLE capacitor ADD COLUMN function TEXT CHECK (function IN (
    'processor_supply', 'rail_smoothing', 'supply_output', 'mains_reservoir', 'mains_suppression', 'coupling', 'timing',
    'other'));
ALTER TABLE capacitor ADD COLUMN low_esr INTEGER CHECK (low_esr IN (0, 1));

ALTER TABLE material ADD COLUMN capacitance_uf REAL CHECK (capacitance_uf > 0);
ALTER TABLE material ADD COLUMN voltage_v REAL CHECK (voltage_v > 0);
ALTER TABLE material ADD COLUMN temperature_c REAL;
ALTER TABLE material ADD COLUMN diameter_mm REAL CHECK (diameter_mm > 0);
ALTER TABLE material ADD COLUMN height_mm REAL CHECK (height_mm > 0);
ALTER TABLE material ADD COLUMN pitch_mm REAL CHECK (pitch_mm > 0);
ALTER TABLE material ADD COLUMN dielectric TEXT CHECK (
  dielectric IN ('wet_aluminium', 'polymer', 'tantalum', 'film', 'suppression', 'ceramic', 'unknown'));
ALTER TABLE material ADD COLUMN mounting TEXT CHECK (mounting IN ('radial', 'axial', 'surface', 'snap_in', 'unknown'));
ALTER TABLE material ADD COLUMN low_esr INTEGER CHECK (low_esr IN (0, 1));

CREATE TABLE design_capacitor (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  design BLOB NOT NULL REFERENCES design DEFERRABLE INITIALLY DEFERRED,
  designator TEXT NOT NULL CHECK (designator <> ''),
  place_on_part TEXT NOT NULL,
  capacitance_uf REAL CHECK (capacitance_uf > 0),
  voltage_v REAL CHECK (voltage_v > 0),
  temperature_c REAL,
  diameter_mm REAL CHECK (diameter_mm > 0),
  height_mm REAL CHECK (height_mm > 0),
  pitch_mm REAL CHECK (pitch_mm > 0),
  dielectric TEXT NOT NULL CHECK (
    dielectric IN ('wet_aluminium', 'polymer', 'tantalum', 'film', 'suppression', 'ceramic', 'unknown')),
  mounting TEXT NOT NULL CHECK (mounting IN ('radial', 'axial', 'surface', 'snap_in', 'unknown')),
  series TEXT NOT NULL,
  polarity TEXT NOT NULL,
  function TEXT CHECK (function IN (
    'processor_supply', 'rail_smoothing', 'supply_output', 'mains_reservoir', 'mains_suppression', 'coupling', 'timing',
    'other')),
  low_esr INTEGER CHECK (low_esr IN (0, 1))
) STRICT, WITHOUT ROWID;

CREATE TABLE kit (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  name TEXT NOT NULL CHECK (name <> ''),
  scope TEXT NOT NULL,
  state TEXT NOT NULL CHECK (state IN ('draft', 'frozen', 'ordered', 'received', 'used')),
  changed_on TEXT NOT NULL CHECK (changed_on = '' OR changed_on BETWEEN '1900' AND '2199-12-31'),
  changed_sequence INTEGER NOT NULL CHECK (changed_sequence >= 1),
  frozen TEXT NOT NULL CHECK (frozen = '' OR frozen BETWEEN '1900' AND '2199-12-31'),
  ordered TEXT NOT NULL CHECK (ordered = '' OR ordered BETWEEN '1900' AND '2199-12-31'),
  received TEXT NOT NULL CHECK (received = '' OR received BETWEEN '1900' AND '2199-12-31'),
  used TEXT NOT NULL CHECK (used = '' OR used BETWEEN '1900' AND '2199-12-31'),
  note TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE kit_line (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  kit BLOB NOT NULL REFERENCES kit DEFERRABLE INITIALLY DEFERRED,
  material BLOB REFERENCES material DEFERRABLE INITIALLY DEFERRED,
  capacitance_uf REAL NOT NULL CHECK (capacitance_uf > 0),
  voltage_v REAL NOT NULL CHECK (voltage_v > 0),
  temperature_c REAL,
  diameter_mm REAL CHECK (diameter_mm > 0),
  height_mm REAL CHECK (height_mm > 0),
  pitch_mm REAL CHECK (pitch_mm > 0),
  dielectric TEXT NOT NULL CHECK (
    dielectric IN ('wet_aluminium', 'polymer', 'tantalum', 'film', 'suppression', 'ceramic', 'unknown')),
  mounting TEXT NOT NULL CHECK (mounting IN ('radial', 'axial', 'surface', 'snap_in', 'unknown')),
  low_esr INTEGER NOT NULL CHECK (low_esr IN (0, 1)),
  from_stock INTEGER NOT NULL CHECK (from_stock >= 0),
  to_buy INTEGER NOT NULL CHECK (to_buy >= 0),
  spares INTEGER NOT NULL CHECK (spares >= 0),
  price_cents INTEGER CHECK (price_cents >= 0),
  supplier TEXT NOT NULL,
  note TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE kit_position (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  line BLOB NOT NULL REFERENCES kit_line DEFERRABLE INITIALLY DEFERRED,
  capacitor BLOB NOT NULL REFERENCES capacitor DEFERRABLE INITIALLY DEFERRED
) STRICT, WITHOUT ROWID;

CREATE INDEX design_capacitor_by_design ON design_capacitor (design);
CREATE INDEX kit_line_by_kit ON kit_line (kit);
CREATE INDEX kit_line_by_material ON kit_line (material) WHERE material IS NOT NULL;
CREATE INDEX kit_position_by_line ON kit_position (line);
CREATE INDEX kit_position_by_capacitor ON kit_position (capacitor);
