-- The logbook's first schema. Never changed once landed: what comes later stands in a file of its own.
--
-- One table an entity, named and columned as the record types. Keys are the 16 bytes of a UUID. Dates are as a
-- person remembers them: 1998-03-12, 1998-03, 1998 or ''. A moment is a date and the logbook's running number.
-- Nothing cascades: what hangs on a record is removed by steps of its own, so that the history sees it go.
-- Kinds of part are a long list that grows, so the program checks them and not the table.
PRAGMA application_id = 0x42774C62; -- "BwLb"

-- Every change that was written, under its number. Its rows' old and new images stand in history; triggers that
-- the program makes from the tables' columns write them, as https://www.sqlite.org/undoredo.html describes.
CREATE TABLE change (
  number INTEGER PRIMARY KEY,
  name TEXT NOT NULL,
  at TEXT NOT NULL,
  act TEXT NOT NULL CHECK (act IN ('new', 'do', 'undo', 'redo')),
  reverses INTEGER REFERENCES change,
  sequence INTEGER NOT NULL CHECK (sequence >= 0)
) STRICT;

CREATE TABLE history (
  step INTEGER PRIMARY KEY,
  change INTEGER NOT NULL REFERENCES change,
  record TEXT NOT NULL,
  key BLOB NOT NULL,
  old TEXT,
  new TEXT
) STRICT;

CREATE INDEX history_by_change ON history (change);

-- What is half typed at a desk; it survives a kill and stays outside history.
CREATE TABLE draft (
  desk TEXT PRIMARY KEY,
  body TEXT NOT NULL,
  saved_at TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE workshop (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  name TEXT NOT NULL,
  keeper TEXT NOT NULL,
  currency TEXT NOT NULL,
  note TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE place (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  within BLOB REFERENCES place DEFERRABLE INITIALLY DEFERRED,
  name TEXT NOT NULL CHECK (name <> ''),
  note TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE lot (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  name TEXT NOT NULL,
  acquired TEXT NOT NULL CHECK (acquired = '' OR acquired BETWEEN '1900' AND '2199-12-31'),
  source TEXT NOT NULL,
  price_cents INTEGER,
  note TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE design (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  kind TEXT NOT NULL,
  maker TEXT NOT NULL,
  model TEXT NOT NULL,
  revision TEXT NOT NULL,
  introduced TEXT NOT NULL CHECK (introduced = '' OR introduced BETWEEN '1900' AND '2199-12-31'),
  discontinued TEXT NOT NULL CHECK (discontinued = '' OR discontinued BETWEEN '1900' AND '2199-12-31'),
  note TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE design_connector (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  design BLOB NOT NULL REFERENCES design DEFERRABLE INITIALLY DEFERRED,
  side TEXT NOT NULL CHECK (side IN ('offers', 'needs')),
  connector TEXT NOT NULL,
  count INTEGER NOT NULL CHECK (count >= 1),
  note TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE design_figure (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  design BLOB NOT NULL REFERENCES design DEFERRABLE INITIALLY DEFERRED,
  figure TEXT NOT NULL,
  value REAL NOT NULL,
  source TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE material (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  name TEXT NOT NULL,
  unit TEXT NOT NULL,
  stock REAL NOT NULL CHECK (stock >= 0),
  minimum REAL NOT NULL CHECK (minimum >= 0),
  place BLOB REFERENCES place DEFERRABLE INITIALLY DEFERRED,
  price_cents INTEGER,
  supplier TEXT NOT NULL,
  note TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE part (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  tag TEXT NOT NULL COLLATE NOCASE UNIQUE CHECK (tag <> ''),
  kind TEXT NOT NULL,
  design BLOB REFERENCES design DEFERRABLE INITIALLY DEFERRED,
  name TEXT NOT NULL,
  serial TEXT NOT NULL,
  originality TEXT NOT NULL CHECK (
    originality IN ('unstated', 'original', 'period_replacement', 'modern_replacement', 'altered')),
  lot BLOB REFERENCES lot DEFERRABLE INITIALLY DEFERRED,
  price_cents INTEGER,
  acquired TEXT NOT NULL CHECK (acquired = '' OR acquired BETWEEN '1900' AND '2199-12-31'),
  place BLOB REFERENCES place DEFERRABLE INITIALLY DEFERRED,
  inside BLOB REFERENCES part DEFERRABLE INITIALLY DEFERRED,
  quarantine TEXT NOT NULL,
  quarantined TEXT NOT NULL CHECK (quarantined = '' OR quarantined BETWEEN '1900' AND '2199-12-31'),
  note TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE machine (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  name TEXT NOT NULL COLLATE NOCASE UNIQUE CHECK (name <> ''),
  purpose TEXT NOT NULL,
  window_from TEXT NOT NULL CHECK (window_from = '' OR window_from BETWEEN '1900' AND '2199-12-31'),
  window_to TEXT NOT NULL CHECK (window_to = '' OR window_to BETWEEN '1900' AND '2199-12-31'),
  standing TEXT NOT NULL CHECK (standing IN ('modest', 'typical', 'best')),
  priority INTEGER NOT NULL CHECK (priority >= 0),
  note TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE role (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  machine BLOB NOT NULL REFERENCES machine DEFERRABLE INITIALLY DEFERRED,
  kind TEXT NOT NULL,
  name TEXT NOT NULL,
  required INTEGER NOT NULL CHECK (required IN (0, 1)),
  count INTEGER NOT NULL CHECK (count >= 1),
  note TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE placement (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  machine BLOB NOT NULL REFERENCES machine DEFERRABLE INITIALLY DEFERRED,
  role BLOB NOT NULL REFERENCES role DEFERRABLE INITIALLY DEFERRED,
  part BLOB NOT NULL REFERENCES part DEFERRABLE INITIALLY DEFERRED,
  pinned INTEGER NOT NULL CHECK (pinned IN (0, 1)),
  planned_on TEXT NOT NULL CHECK (planned_on = '' OR planned_on BETWEEN '1900' AND '2199-12-31'),
  planned_sequence INTEGER NOT NULL CHECK (planned_sequence >= 1),
  reason TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE fitting (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  machine BLOB NOT NULL REFERENCES machine DEFERRABLE INITIALLY DEFERRED,
  role BLOB REFERENCES role DEFERRABLE INITIALLY DEFERRED,
  part BLOB NOT NULL REFERENCES part DEFERRABLE INITIALLY DEFERRED,
  fitted_on TEXT NOT NULL CHECK (fitted_on = '' OR fitted_on BETWEEN '1900' AND '2199-12-31'),
  fitted_sequence INTEGER NOT NULL CHECK (fitted_sequence >= 1),
  removed_on TEXT CHECK (removed_on = '' OR removed_on BETWEEN '1900' AND '2199-12-31'),
  removed_sequence INTEGER CHECK (removed_sequence >= 1),
  note TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE power_on (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  machine BLOB NOT NULL REFERENCES machine DEFERRABLE INITIALLY DEFERRED,
  switched_on TEXT NOT NULL CHECK (switched_on = '' OR switched_on BETWEEN '1900' AND '2199-12-31'),
  switched_sequence INTEGER NOT NULL CHECK (switched_sequence >= 1),
  configuration TEXT NOT NULL,
  settings TEXT NOT NULL,
  steps TEXT NOT NULL,
  result TEXT NOT NULL CHECK (result IN ('well', 'faulty', 'stopped')),
  happened TEXT NOT NULL,
  who TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE marking (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  part BLOB NOT NULL REFERENCES part DEFERRABLE INITIALLY DEFERRED,
  read_on TEXT NOT NULL CHECK (read_on = '' OR read_on BETWEEN '1900' AND '2199-12-31'),
  read_sequence INTEGER NOT NULL CHECK (read_sequence >= 1),
  surface TEXT NOT NULL CHECK (surface IN ('board', 'chip', 'sticker', 'capacitor', 'drive_label', 'case', 'other')),
  place_on_part TEXT NOT NULL,
  text TEXT NOT NULL,
  from_factory TEXT NOT NULL CHECK (from_factory IN ('unknown', 'yes', 'no')),
  scheme TEXT NOT NULL,
  supersedes BLOB REFERENCES marking DEFERRABLE INITIALLY DEFERRED,
  note TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE survey (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  part BLOB NOT NULL REFERENCES part DEFERRABLE INITIALLY DEFERRED,
  looked_on TEXT NOT NULL CHECK (looked_on = '' OR looked_on BETWEEN '1900' AND '2199-12-31'),
  looked_sequence INTEGER NOT NULL CHECK (looked_sequence >= 1),
  who TEXT NOT NULL,
  why TEXT NOT NULL,
  supersedes BLOB REFERENCES survey DEFERRABLE INITIALLY DEFERRED,
  note TEXT NOT NULL,
  answers TEXT NOT NULL CHECK (json_valid(answers))
) STRICT, WITHOUT ROWID;

CREATE TABLE finding (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  part BLOB NOT NULL REFERENCES part DEFERRABLE INITIALLY DEFERRED,
  what TEXT NOT NULL,
  place_on_part TEXT NOT NULL,
  source TEXT NOT NULL CHECK (source IN ('survey', 'capacitors', 'work', 'hand')),
  question TEXT NOT NULL,
  note TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE work (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  part BLOB NOT NULL REFERENCES part DEFERRABLE INITIALLY DEFERRED,
  finding BLOB REFERENCES finding DEFERRABLE INITIALLY DEFERRED,
  rule TEXT NOT NULL,
  title TEXT NOT NULL,
  hold TEXT NOT NULL CHECK (hold IN ('storage', 'power', 'fitting', 'ready', 'looks')),
  nature TEXT NOT NULL CHECK (nature IN ('care', 'rework', 'repair', 'modification')),
  state TEXT NOT NULL CHECK (state IN ('open', 'waiting', 'doing', 'done', 'waived', 'failed')),
  changed_on TEXT NOT NULL CHECK (changed_on = '' OR changed_on BETWEEN '1900' AND '2199-12-31'),
  changed_sequence INTEGER NOT NULL CHECK (changed_sequence >= 1),
  who TEXT NOT NULL,
  minutes INTEGER CHECK (minutes >= 0),
  used TEXT NOT NULL,
  reason TEXT NOT NULL,
  reversible INTEGER CHECK (reversible IN (0, 1)),
  note TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE look (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  finding BLOB NOT NULL REFERENCES finding DEFERRABLE INITIALLY DEFERRED,
  looked_on TEXT NOT NULL CHECK (looked_on = '' OR looked_on BETWEEN '1900' AND '2199-12-31'),
  looked_sequence INTEGER NOT NULL CHECK (looked_sequence >= 1),
  state TEXT NOT NULL CHECK (state IN ('open', 'watched', 'cured', 'confirmed', 'accepted', 'returned')),
  severity TEXT NOT NULL CHECK (severity IN ('slight', 'plain', 'grave')),
  share_percent REAL CHECK (share_percent BETWEEN 0 AND 100),
  again_by TEXT NOT NULL CHECK (again_by = '' OR again_by BETWEEN '1900' AND '2199-12-31'),
  reason TEXT NOT NULL,
  survey BLOB REFERENCES survey DEFERRABLE INITIALLY DEFERRED,
  work BLOB REFERENCES work DEFERRABLE INITIALLY DEFERRED
) STRICT, WITHOUT ROWID;

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
  dielectric TEXT NOT NULL CHECK (
    dielectric IN ('wet_aluminium', 'polymer', 'tantalum', 'film', 'suppression', 'ceramic', 'unknown')),
  mounting TEXT NOT NULL CHECK (mounting IN ('radial', 'axial', 'surface', 'snap_in', 'unknown')),
  series TEXT NOT NULL,
  polarity TEXT NOT NULL,
  logged_on TEXT NOT NULL CHECK (logged_on = '' OR logged_on BETWEEN '1900' AND '2199-12-31'),
  logged_sequence INTEGER NOT NULL CHECK (logged_sequence >= 1),
  state TEXT NOT NULL CHECK (
    state IN ('not_looked', 'sound', 'bulged', 'leaking', 'burst', 'cracked', 'missing', 'reversed', 'out_of_limits'))
) STRICT, WITHOUT ROWID;

CREATE TABLE capacitor_look (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  capacitor BLOB NOT NULL REFERENCES capacitor DEFERRABLE INITIALLY DEFERRED,
  looked_on TEXT NOT NULL CHECK (looked_on = '' OR looked_on BETWEEN '1900' AND '2199-12-31'),
  looked_sequence INTEGER NOT NULL CHECK (looked_sequence >= 1),
  state TEXT NOT NULL CHECK (
    state IN ('not_looked', 'sound', 'bulged', 'leaking', 'burst', 'cracked', 'missing', 'reversed',
      'out_of_limits')),
  measured_uf REAL CHECK (measured_uf >= 0),
  esr_mohm REAL CHECK (esr_mohm >= 0),
  leakage_ua REAL CHECK (leakage_ua >= 0),
  replaced_by TEXT NOT NULL,
  note TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE reading (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  part BLOB REFERENCES part DEFERRABLE INITIALLY DEFERRED,
  machine BLOB REFERENCES machine DEFERRABLE INITIALLY DEFERRED,
  measured_on TEXT NOT NULL CHECK (measured_on = '' OR measured_on BETWEEN '1900' AND '2199-12-31'),
  measured_sequence INTEGER NOT NULL CHECK (measured_sequence >= 1),
  quantity TEXT NOT NULL,
  value REAL NOT NULL,
  unit TEXT NOT NULL,
  condition TEXT NOT NULL,
  who TEXT NOT NULL,
  supersedes BLOB REFERENCES reading DEFERRABLE INITIALLY DEFERRED,
  note TEXT NOT NULL,
  CHECK ((part IS NOT NULL) + (machine IS NOT NULL) = 1)
) STRICT, WITHOUT ROWID;

CREATE TABLE setting (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  part BLOB NOT NULL REFERENCES part DEFERRABLE INITIALLY DEFERRED,
  found_on TEXT NOT NULL CHECK (found_on = '' OR found_on BETWEEN '1900' AND '2199-12-31'),
  found_sequence INTEGER NOT NULL CHECK (found_sequence >= 1),
  name TEXT NOT NULL,
  value TEXT NOT NULL,
  source TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE proof (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  part BLOB REFERENCES part DEFERRABLE INITIALLY DEFERRED,
  machine BLOB REFERENCES machine DEFERRABLE INITIALLY DEFERRED,
  test TEXT NOT NULL,
  run_on TEXT NOT NULL CHECK (run_on = '' OR run_on BETWEEN '1900' AND '2199-12-31'),
  run_sequence INTEGER NOT NULL CHECK (run_sequence >= 1),
  rig TEXT NOT NULL,
  minutes INTEGER CHECK (minutes >= 0),
  criterion TEXT NOT NULL,
  result TEXT NOT NULL CHECK (result IN ('passed', 'failed', 'undecided')),
  who TEXT NOT NULL,
  note TEXT NOT NULL,
  CHECK ((part IS NOT NULL) + (machine IS NOT NULL) = 1)
) STRICT, WITHOUT ROWID;

CREATE TABLE fault_case (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  part BLOB REFERENCES part DEFERRABLE INITIALLY DEFERRED,
  machine BLOB REFERENCES machine DEFERRABLE INITIALLY DEFERRED,
  opened_on TEXT NOT NULL CHECK (opened_on = '' OR opened_on BETWEEN '1900' AND '2199-12-31'),
  opened_sequence INTEGER NOT NULL CHECK (opened_sequence >= 1),
  symptom TEXT NOT NULL,
  state TEXT NOT NULL CHECK (state IN ('open', 'found', 'not_reproduced', 'given_up')),
  outcome TEXT NOT NULL,
  CHECK ((part IS NOT NULL) + (machine IS NOT NULL) = 1)
) STRICT, WITHOUT ROWID;

CREATE TABLE trial (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  "case" BLOB NOT NULL REFERENCES fault_case DEFERRABLE INITIALLY DEFERRED,
  tried_on TEXT NOT NULL CHECK (tried_on = '' OR tried_on BETWEEN '1900' AND '2199-12-31'),
  tried_sequence INTEGER NOT NULL CHECK (tried_sequence >= 1),
  configuration TEXT NOT NULL,
  step TEXT NOT NULL,
  suspect BLOB REFERENCES part DEFERRABLE INITIALLY DEFERRED,
  known_good BLOB REFERENCES part DEFERRABLE INITIALLY DEFERRED,
  result TEXT NOT NULL CHECK (result IN ('symptom_stays', 'symptom_gone', 'symptom_changed', 'undecided')),
  note TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE custody_event (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  part BLOB NOT NULL REFERENCES part DEFERRABLE INITIALLY DEFERRED,
  happened_on TEXT NOT NULL CHECK (happened_on = '' OR happened_on BETWEEN '1900' AND '2199-12-31'),
  happened_sequence INTEGER NOT NULL CHECK (happened_sequence >= 1),
  act TEXT NOT NULL CHECK (act IN ('borrowed', 'lent', 'came_back', 'gave_back', 'bought', 'sold', 'scrapped')),
  party TEXT NOT NULL,
  until TEXT NOT NULL CHECK (until = '' OR until BETWEEN '1900' AND '2199-12-31'),
  price_cents INTEGER,
  condition TEXT NOT NULL,
  note TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE valuation (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  part BLOB NOT NULL REFERENCES part DEFERRABLE INITIALLY DEFERRED,
  "on" TEXT NOT NULL CHECK ("on" = '' OR "on" BETWEEN '1900' AND '2199-12-31'),
  amount_cents INTEGER NOT NULL,
  basis TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE photo (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  part BLOB REFERENCES part DEFERRABLE INITIALLY DEFERRED,
  machine BLOB REFERENCES machine DEFERRABLE INITIALLY DEFERRED,
  lot BLOB REFERENCES lot DEFERRABLE INITIALLY DEFERRED,
  content TEXT NOT NULL CHECK (length(content) = 64),
  extension TEXT NOT NULL,
  width_px INTEGER NOT NULL CHECK (width_px >= 0),
  height_px INTEGER NOT NULL CHECK (height_px >= 0),
  added_on TEXT NOT NULL CHECK (added_on = '' OR added_on BETWEEN '1900' AND '2199-12-31'),
  added_sequence INTEGER NOT NULL CHECK (added_sequence >= 1),
  taken TEXT NOT NULL CHECK (taken = '' OR taken BETWEEN '1900' AND '2199-12-31'),
  view TEXT NOT NULL CHECK (view IN ('overview', 'detail', 'before', 'after', 'settings', 'label')),
  caption TEXT NOT NULL,
  CHECK ((part IS NOT NULL) + (machine IS NOT NULL) + (lot IS NOT NULL) = 1)
) STRICT, WITHOUT ROWID;

CREATE TABLE photo_mark (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  photo BLOB NOT NULL REFERENCES photo DEFERRABLE INITIALLY DEFERRED,
  points TEXT NOT NULL CHECK (json_valid(points)),
  finding BLOB REFERENCES finding DEFERRABLE INITIALLY DEFERRED,
  capacitor BLOB REFERENCES capacitor DEFERRABLE INITIALLY DEFERRED,
  marking BLOB REFERENCES marking DEFERRABLE INITIALLY DEFERRED,
  work BLOB REFERENCES work DEFERRABLE INITIALLY DEFERRED,
  note TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE attachment (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  part BLOB REFERENCES part DEFERRABLE INITIALLY DEFERRED,
  machine BLOB REFERENCES machine DEFERRABLE INITIALLY DEFERRED,
  lot BLOB REFERENCES lot DEFERRABLE INITIALLY DEFERRED,
  kind TEXT NOT NULL CHECK (
    kind IN ('firmware_image', 'drive_image', 'settings', 'manual', 'receipt', 'log', 'other')),
  content TEXT NOT NULL CHECK (length(content) = 64),
  file_name TEXT NOT NULL,
  bytes INTEGER NOT NULL CHECK (bytes >= 0),
  added_on TEXT NOT NULL CHECK (added_on = '' OR added_on BETWEEN '1900' AND '2199-12-31'),
  added_sequence INTEGER NOT NULL CHECK (added_sequence >= 1),
  note TEXT NOT NULL,
  CHECK ((part IS NOT NULL) + (machine IS NOT NULL) + (lot IS NOT NULL) = 1)
) STRICT, WITHOUT ROWID;

-- Whatever refers to a record is found without reading a whole table.
CREATE INDEX place_by_within ON place (within) WHERE within IS NOT NULL;
CREATE INDEX design_connector_by_design ON design_connector (design);
CREATE INDEX design_figure_by_design ON design_figure (design);
CREATE INDEX material_by_place ON material (place) WHERE place IS NOT NULL;
CREATE INDEX part_by_design ON part (design) WHERE design IS NOT NULL;
CREATE INDEX part_by_lot ON part (lot) WHERE lot IS NOT NULL;
CREATE INDEX part_by_place ON part (place) WHERE place IS NOT NULL;
CREATE INDEX part_by_inside ON part (inside) WHERE inside IS NOT NULL;
CREATE INDEX role_by_machine ON role (machine);
CREATE INDEX placement_by_machine ON placement (machine);
CREATE INDEX placement_by_role ON placement (role);
CREATE INDEX placement_by_part ON placement (part);
CREATE INDEX fitting_by_machine ON fitting (machine);
CREATE INDEX fitting_by_role ON fitting (role) WHERE role IS NOT NULL;
CREATE INDEX fitting_by_part ON fitting (part);
CREATE INDEX power_on_by_machine ON power_on (machine);
CREATE INDEX marking_by_part ON marking (part);
CREATE INDEX marking_by_supersedes ON marking (supersedes) WHERE supersedes IS NOT NULL;
CREATE INDEX survey_by_part ON survey (part);
CREATE INDEX survey_by_supersedes ON survey (supersedes) WHERE supersedes IS NOT NULL;
CREATE INDEX finding_by_part ON finding (part);
CREATE INDEX work_by_part ON work (part);
CREATE INDEX work_by_finding ON work (finding) WHERE finding IS NOT NULL;
CREATE INDEX look_by_finding ON look (finding);
CREATE INDEX look_by_survey ON look (survey) WHERE survey IS NOT NULL;
CREATE INDEX look_by_work ON look (work) WHERE work IS NOT NULL;
CREATE INDEX capacitor_by_part ON capacitor (part);
CREATE INDEX capacitor_look_by_capacitor ON capacitor_look (capacitor);
CREATE INDEX reading_by_part ON reading (part) WHERE part IS NOT NULL;
CREATE INDEX reading_by_machine ON reading (machine) WHERE machine IS NOT NULL;
CREATE INDEX reading_by_supersedes ON reading (supersedes) WHERE supersedes IS NOT NULL;
CREATE INDEX setting_by_part ON setting (part);
CREATE INDEX proof_by_part ON proof (part) WHERE part IS NOT NULL;
CREATE INDEX proof_by_machine ON proof (machine) WHERE machine IS NOT NULL;
CREATE INDEX fault_case_by_part ON fault_case (part) WHERE part IS NOT NULL;
CREATE INDEX fault_case_by_machine ON fault_case (machine) WHERE machine IS NOT NULL;
CREATE INDEX trial_by_case ON trial ("case");
CREATE INDEX trial_by_suspect ON trial (suspect) WHERE suspect IS NOT NULL;
CREATE INDEX trial_by_known_good ON trial (known_good) WHERE known_good IS NOT NULL;
CREATE INDEX custody_event_by_part ON custody_event (part);
CREATE INDEX valuation_by_part ON valuation (part);
CREATE INDEX photo_by_part ON photo (part) WHERE part IS NOT NULL;
CREATE INDEX photo_by_machine ON photo (machine) WHERE machine IS NOT NULL;
CREATE INDEX photo_by_lot ON photo (lot) WHERE lot IS NOT NULL;
CREATE INDEX photo_mark_by_photo ON photo_mark (photo);
CREATE INDEX photo_mark_by_finding ON photo_mark (finding) WHERE finding IS NOT NULL;
CREATE INDEX photo_mark_by_capacitor ON photo_mark (capacitor) WHERE capacitor IS NOT NULL;
CREATE INDEX photo_mark_by_marking ON photo_mark (marking) WHERE marking IS NOT NULL;
CREATE INDEX photo_mark_by_work ON photo_mark (work) WHERE work IS NOT NULL;
CREATE INDEX attachment_by_part ON attachment (part) WHERE part IS NOT NULL;
CREATE INDEX attachment_by_machine ON attachment (machine) WHERE machine IS NOT NULL;
CREATE INDEX attachment_by_lot ON attachment (lot) WHERE lot IS NOT NULL;
