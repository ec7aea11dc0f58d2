-- Bipolar electrolytics. A CHECK cannot be changed where it stands: each table is laid anew and filled from a copy.

CREATE TABLE old_material AS SELECT * FROM material;
DROP TABLE material;
CREATE TABLE material (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  name TEXT NOT NULL,
  unit TEXT NOT NULL,
  stock REAL NOT NULL CHECK (stock >= 0),
  minimum REAL NOT NULL CHECK (minimum >= 0),
  place BLOB REFERENCES place DEFERRABLE INITIALLY DEFERRED,
  price_cents INTEGER,
  supplier TEXT NOT NULL,
  note TEXT NOT NULL,
  capacitance_uf REAL CHECK (capacitance_uf > 0),
  voltage_v REAL CHECK (voltage_v > 0),
  temperature_c REAL,
  diameter_mm REAL CHECK (diameter_mm > 0),
  height_mm REAL CHECK (height_mm > 0),
  pitch_mm REAL CHECK (pitch_mm > 0),
  dielectric TEXT CHECK (dielectric IN (
    'wet_aluminium', 'bipolar_aluminium', 'polymer', 'tantalum', 'film', 'suppression', 'ceramic', 'unknown')),
  mounting TEXT CHECK (mounting IN ('radial', 'axial', 'surface', 'snap_in', 'unknown')),
  low_esr INTEGER CHECK (low_esr IN (0, 1)),
  on_order REAL NOT NULL DEFAULT 0 CHECK (on_order >= 0)
) STRICT, WITHOUT ROWID;
INSERT INTO material SELECT * FROM old_material;
DROP TABLE old_material;
CREATE INDEX material_by_place ON material (place) WHERE place IS NOT NULL;

CREATE TABLE old_capacitor AS SELECT * FROM capacitor;
DROP TABLE capacitor;
CREATE TABLE capacitor (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  part BLOB NOT NULL REFERENCES part DEFERRABLE INITIALLY DEFERRED,
  designator TEXT NOT NULL,
  place_on_part TEXT NOT NULL,
  capacitance_uf REAL CHECK (capacitance_uf > 0),
  voltage_v REAL CHECK (voltage_v > 0),
  temperature_c REAL,
  diameter_mm REAL CHECK (diameter_mm > 0),
  height_mm REAL CHECK (height_mm > 0),
  pitch_mm REAL CHECK (pitch_mm > 0),
  dielectric TEXT NOT NULL CHECK (dielectric IN (
    'wet_aluminium', 'bipolar_aluminium', 'polymer', 'tantalum', 'film', 'suppression', 'ceramic', 'unknown')),
  mounting TEXT NOT NULL CHECK (mounting IN ('radial', 'axial', 'surface', 'snap_in', 'unknown')),
  series TEXT NOT NULL,
  polarity TEXT NOT NULL,
  logged_on TEXT NOT NULL CHECK (logged_on = '' OR logged_on BETWEEN '1900' AND '2199-12-31'),
  logged_sequence INTEGER NOT NULL CHECK (logged_sequence >= 1),
  state TEXT NOT NULL CHECK (
    state IN ('not_looked', 'sound', 'bulged', 'leaking', 'burst', 'cracked', 'missing', 'reversed', 'out_of_limits')),
  function TEXT CHECK (function IN (
    'processor_supply', 'rail_smoothing', 'supply_output', 'mains_reservoir', 'mains_suppression', 'coupling', 'timing',
    'other')),
  low_esr INTEGER CHECK (low_esr IN (0, 1))
) STRICT, WITHOUT ROWID;
INSERT INTO capacitor SELECT * FROM old_capacitor;
DROP TABLE old_capacitor;
CREATE INDEX capacitor_by_part ON capacitor (part);

CREATE TABLE old_design_capacitor AS SELECT * FROM design_capacitor;
DROP TABLE design_capacitor;
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
  dielectric TEXT NOT NULL CHECK (dielectric IN (
    'wet_aluminium', 'bipolar_aluminium', 'polymer', 'tantalum', 'film', 'suppression', 'ceramic', 'unknown')),
  mounting TEXT NOT NULL CHECK (mounting IN ('radial', 'axial', 'surface', 'snap_in', 'unknown')),
  series TEXT NOT NULL,
  polarity TEXT NOT NULL,
  function TEXT CHECK (function IN (
    'processor_supply', 'rail_smoothing', 'supply_output', 'mains_reservoir', 'mains_suppression', 'coupling', 'timing',
    'other')),
  low_esr INTEGER CHECK (low_esr IN (0, 1))
) STRICT, WITHOUT ROWID;
INSERT INTO design_capacitor SELECT * FROM old_design_capacitor;
DROP TABLE old_design_capacitor;
CREATE INDEX design_capacitor_by_design ON design_capacitor (design);

CREATE TABLE old_kit_line AS SELECT * FROM kit_line;
DROP TABLE kit_line;
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
  dielectric TEXT NOT NULL CHECK (dielectric IN (
    'wet_aluminium', 'bipolar_aluminium', 'polymer', 'tantalum', 'film', 'suppression', 'ceramic', 'unknown')),
  mounting TEXT NOT NULL CHECK (mounting IN ('radial', 'axial', 'surface', 'snap_in', 'unknown')),
  low_esr INTEGER NOT NULL CHECK (low_esr IN (0, 1)),
  from_stock INTEGER NOT NULL CHECK (from_stock >= 0),
  to_buy INTEGER NOT NULL CHECK (to_buy >= 0),
  spares INTEGER NOT NULL CHECK (spares >= 0),
  price_cents INTEGER CHECK (price_cents >= 0),
  supplier TEXT NOT NULL,
  note TEXT NOT NULL
) STRICT, WITHOUT ROWID;
INSERT INTO kit_line SELECT * FROM old_kit_line;
DROP TABLE old_kit_line;
CREATE INDEX kit_line_by_kit ON kit_line (kit);
CREATE INDEX kit_line_by_material ON kit_line (material) WHERE material IS NOT NULL;
