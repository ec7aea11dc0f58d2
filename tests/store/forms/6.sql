-- A logbook as version 6 of its form wrote it, dumped by SQLite's own shell.
PRAGMA foreign_keys=OFF;
BEGIN TRANSACTION;
CREATE TABLE change (
  number INTEGER PRIMARY KEY,
  name TEXT NOT NULL,
  at TEXT NOT NULL,
  act TEXT NOT NULL CHECK (act IN ('new', 'do', 'undo', 'redo')),
  reverses INTEGER REFERENCES change,
  sequence INTEGER NOT NULL CHECK (sequence >= 0)
) STRICT;
INSERT INTO change VALUES(1,'New logbook','2026-12-01T13:46:46.884Z','new',NULL,0);
INSERT INTO change VALUES(2,'Import from Lantern Street Workshop','2026-12-01T13:46:47.101Z','do',NULL,583);
CREATE TABLE history (
  step INTEGER PRIMARY KEY,
  change INTEGER NOT NULL REFERENCES change,
  record TEXT NOT NULL,
  key BLOB NOT NULL,
  old TEXT,
  new TEXT
) STRICT;
INSERT INTO history VALUES(1,1,'workshop',X'01a231dba07b75e789f79468107e80c9',NULL,'{"id":"01a231dba07b75e789f79468107e80c9","name":"z","keeper":"","currency":"EUR","note":""}');
INSERT INTO history VALUES(2,2,'workshop',X'01a231dba07b75e789f79468107e80c9','{"id":"01a231dba07b75e789f79468107e80c9","name":"z","keeper":"","currency":"EUR","note":""}',NULL);
INSERT INTO history VALUES(3,2,'workshop',X'01a216c6145971b7ba860ef8ac211b3a',NULL,'{"id":"01a216c6145971b7ba860ef8ac211b3a","name":"Lantern Street Workshop","keeper":"Ines Marlow","currency":"EUR","note":"Volunteers who prepare the exhibit “At home and at work: computers 1988 to 2002”. Seven machines have to run under visitors'' hands. This is a sample: everything in it is invented, and everything in it may be changed."}');
INSERT INTO history VALUES(4,2,'place',X'01a216c6153375ac87d6ccf38a6be87b',NULL,'{"id":"01a216c6153375ac87d6ccf38a6be87b","within":null,"name":"Workshop","note":"Ground floor, Lantern Street"}');
INSERT INTO history VALUES(5,2,'place',X'01a216c6153375ac87d6ccf4604ad80b',NULL,'{"id":"01a216c6153375ac87d6ccf4604ad80b","within":"01a216c6153375ac87d6ccf38a6be87b","name":"Bench","note":""}');
INSERT INTO history VALUES(6,2,'place',X'01a216c6153375ac87d6ccf50b3aa145',NULL,'{"id":"01a216c6153375ac87d6ccf50b3aa145","within":"01a216c6153375ac87d6ccf38a6be87b","name":"Shelf A","note":"Boards and cards"}');
INSERT INTO history VALUES(7,2,'place',X'01a216c6153375ac87d6ccf68f0bd74a',NULL,'{"id":"01a216c6153375ac87d6ccf68f0bd74a","within":"01a216c6153375ac87d6ccf50b3aa145","name":"Box A1: mainboards","note":""}');
INSERT INTO history VALUES(8,2,'place',X'01a216c6153375ac87d6ccf7ee1151b3',NULL,'{"id":"01a216c6153375ac87d6ccf7ee1151b3","within":"01a216c6153375ac87d6ccf50b3aa145","name":"Box A2: cards","note":""}');
INSERT INTO history VALUES(9,2,'place',X'01a216c6153375ac87d6ccf8b51fe81e',NULL,'{"id":"01a216c6153375ac87d6ccf8b51fe81e","within":"01a216c6153375ac87d6ccf50b3aa145","name":"Box A3: processors and memory","note":""}');
INSERT INTO history VALUES(10,2,'place',X'01a216c6153375ac87d6ccf992887030',NULL,'{"id":"01a216c6153375ac87d6ccf992887030","within":"01a216c6153375ac87d6ccf38a6be87b","name":"Shelf B","note":"Drives and supplies"}');
INSERT INTO history VALUES(11,2,'place',X'01a216c6153375ac87d6ccfab57bf14e',NULL,'{"id":"01a216c6153375ac87d6ccfab57bf14e","within":"01a216c6153375ac87d6ccf992887030","name":"Box B1: disks","note":""}');
INSERT INTO history VALUES(12,2,'place',X'01a216c6153375ac87d6ccfb66a69af4',NULL,'{"id":"01a216c6153375ac87d6ccfb66a69af4","within":"01a216c6153375ac87d6ccf992887030","name":"Box B2: drives with a tray or a slot","note":""}');
INSERT INTO history VALUES(13,2,'place',X'01a216c6153375ac87d6ccfcea893e54',NULL,'{"id":"01a216c6153375ac87d6ccfcea893e54","within":"01a216c6153375ac87d6ccf38a6be87b","name":"Drawer of small parts","note":"Cables, posts, coolers, cells"}');
INSERT INTO history VALUES(14,2,'place',X'01a216c6153375ac87d6ccfd6802ad68',NULL,'{"id":"01a216c6153375ac87d6ccfd6802ad68","within":null,"name":"Store room","note":""}');
INSERT INTO history VALUES(15,2,'place',X'01a216c6153375ac87d6ccfe4c546f71',NULL,'{"id":"01a216c6153375ac87d6ccfe4c546f71","within":"01a216c6153375ac87d6ccfd6802ad68","name":"Rack 1: cases","note":""}');
INSERT INTO history VALUES(16,2,'place',X'01a216c6153375ac87d6ccff15936bdf',NULL,'{"id":"01a216c6153375ac87d6ccff15936bdf","within":"01a216c6153375ac87d6ccfd6802ad68","name":"Rack 2: monitors and keyboards","note":""}');
INSERT INTO history VALUES(17,2,'place',X'01a216c6153375ac87d6cd005498e606',NULL,'{"id":"01a216c6153375ac87d6cd005498e606","within":"01a216c6153375ac87d6ccfd6802ad68","name":"Quarantine tub","note":"Lidded, on the floor, away from everything that can corrode"}');
INSERT INTO history VALUES(18,2,'place',X'01a216c6153375ac87d6cd01c0b37be3',NULL,'{"id":"01a216c6153375ac87d6cd01c0b37be3","within":null,"name":"Exhibit hall","note":""}');
INSERT INTO history VALUES(19,2,'lot',X'01a216c6153375ac87d6cd028d3c1e3b',NULL,'{"id":"01a216c6153375ac87d6cd028d3c1e3b","name":"School clearance, Marshwick Lane","acquired":"2024-09","source":"Marshwick Lane School, the caretaker","price_cents":18000,"note":"One computer room of the early nineties. All of it stood in the same cellar: what one has, the others may have."}');
INSERT INTO history VALUES(20,2,'lot',X'01a216c6153375ac87d6cd03bcea2e28',NULL,'{"id":"01a216c6153375ac87d6cd03bcea2e28","name":"Attic find, Tolver Street","acquired":"2025-04","source":"Family Ardwin","price_cents":6000,"note":"Dry attic, original boxes for some."}');
INSERT INTO history VALUES(21,2,'lot',X'01a216c6153375ac87d6cd042ea834dd',NULL,'{"id":"01a216c6153375ac87d6cd042ea834dd","name":"Swap meet, Fennhall","acquired":"2025-12","source":"Several tables","price_cents":14500,"note":""}');
INSERT INTO history VALUES(22,2,'lot',X'01a216c6153375ac87d6cd05f58ff9fb',NULL,'{"id":"01a216c6153375ac87d6cd05f58ff9fb","name":"Harbour office clear-out","acquired":"2025-08","source":"Port administration, through Bram Holt","price_cents":0,"note":"Given free against collection. Salt air: look at every contact."}');
INSERT INTO history VALUES(23,2,'lot',X'01a216c6153375ac87d6cd0648dfd33f',NULL,'{"id":"01a216c6153375ac87d6cd0648dfd33f","name":"Box of cards, auction","acquired":"2026-04","source":"Online auction, “untested, from storage”","price_cents":8800,"note":""}');
INSERT INTO history VALUES(24,2,'lot',X'01a216c6153375ac87d6cd0766737cd7',NULL,'{"id":"01a216c6153375ac87d6cd0766737cd7","name":"Studio Pellam closes down","acquired":"2026-06","source":"Studio Pellam","price_cents":12000,"note":"Ran until 2004, then stored warm and dry."}');
INSERT INTO history VALUES(25,2,'design',X'01a216c6153375ac87d6cd1736f7b7fc',NULL,'{"id":"01a216c6153375ac87d6cd1736f7b7fc","kind":"mainboard","maker":"Aldmoor","model":"A286-16","revision":"C","introduced":"1988","discontinued":"1991","note":"286 class processor soldered in; cell soldered beside the keyboard port."}');
INSERT INTO history VALUES(26,2,'design',X'01a216c6153375ac87d6cd2175509f20',NULL,'{"id":"01a216c6153375ac87d6cd2175509f20","kind":"mainboard","maker":"Aldmoor","model":"A386-40","revision":"1.2","introduced":"1990","discontinued":"1993","note":""}');
INSERT INTO history VALUES(27,2,'design',X'01a216c6153375ac87d6cd2da07c2f0c',NULL,'{"id":"01a216c6153375ac87d6cd2da07c2f0c","kind":"mainboard","maker":"Quoxby","model":"QB-386W","revision":"B","introduced":"1991","discontinued":"1993","note":""}');
INSERT INTO history VALUES(28,2,'design',X'01a216c6153375ac87d6cd38fb0e5853',NULL,'{"id":"01a216c6153375ac87d6cd38fb0e5853","kind":"mainboard","maker":"Aldmoor","model":"A486-VL","revision":"2.0","introduced":"1992","discontinued":"1995","note":""}');
INSERT INTO history VALUES(29,2,'design',X'01a216c6153375ac87d6cd46fea7b34a',NULL,'{"id":"01a216c6153375ac87d6cd46fea7b34a","kind":"mainboard","maker":"Quoxby","model":"QB-486S","revision":"A","introduced":"1993","discontinued":"1995","note":""}');
INSERT INTO history VALUES(30,2,'design',X'01a216c6153375ac87d6cd7d5fe3dfd9',NULL,'{"id":"01a216c6153375ac87d6cd7d5fe3dfd9","kind":"mainboard","maker":"Wexdale","model":"W370-T","revision":"2.1","introduced":"2000-05","discontinued":"2002","note":"Six capacitors round the processor are of the years that went bad."}');
INSERT INTO history VALUES(31,2,'design',X'01a216c6153375ac87d6cda915dc7c20',NULL,'{"id":"01a216c6153375ac87d6cda915dc7c20","kind":"processor","maker":"Lorrith","model":"Cartessa 450","revision":"","introduced":"1998-09","discontinued":"2000","note":"Comes with a heavy cooler: needs the posts and the support under it."}');
INSERT INTO history VALUES(32,2,'design',X'01a216c6153375ac87d6cdb7033ead36',NULL,'{"id":"01a216c6153375ac87d6cdb7033ead36","kind":"memory_module","maker":"Tumok","model":"TMK-1M30-70","revision":"","introduced":"1989","discontinued":"1994","note":""}');
INSERT INTO history VALUES(33,2,'design',X'01a216c6153375ac87d6cdbfb6544369',NULL,'{"id":"01a216c6153375ac87d6cdbfb6544369","kind":"memory_module","maker":"Tumok","model":"TMK-128S-100","revision":"","introduced":"1998-05","discontinued":"2002","note":""}');
INSERT INTO history VALUES(34,2,'design',X'01a216c6153375ac87d6cdd46d08d1db',NULL,'{"id":"01a216c6153375ac87d6cdd46d08d1db","kind":"video_card","maker":"Orbelis","model":"Oriel 8","revision":"","introduced":"1988","discontinued":"1991","note":""}');
INSERT INTO history VALUES(35,2,'design',X'01a216c6153471b7ae2db15fddaccc54',NULL,'{"id":"01a216c6153471b7ae2db15fddaccc54","kind":"sound_card","maker":"Sonderwick","model":"Choir 8","revision":"","introduced":"1990","discontinued":"1993","note":"Silent without −5 V."}');
INSERT INTO history VALUES(36,2,'design',X'01a216c6153471b7ae2db164b12f80bc',NULL,'{"id":"01a216c6153471b7ae2db164b12f80bc","kind":"sound_card","maker":"Sonderwick","model":"Choir 16","revision":"1.3","introduced":"1993","discontinued":"1997","note":""}');
INSERT INTO history VALUES(37,2,'design',X'01a216c6153471b7ae2db1e8ac5c5098',NULL,'{"id":"01a216c6153471b7ae2db1e8ac5c5098","kind":"power_supply","maker":"Galvenor","model":"GV-200A","revision":"","introduced":"1988","discontinued":"1996","note":""}');
INSERT INTO history VALUES(38,2,'design',X'01a216c6153471b7ae2db1f3d9922ad1',NULL,'{"id":"01a216c6153471b7ae2db1f3d9922ad1","kind":"power_supply","maker":"Galvenor","model":"GV-230A","revision":"","introduced":"1991","discontinued":"1998","note":""}');
INSERT INTO history VALUES(39,2,'design',X'01a216c6153471b7ae2db1fd041c60af',NULL,'{"id":"01a216c6153471b7ae2db1fd041c60af","kind":"power_supply","maker":"Galvenor","model":"GV-250X","revision":"","introduced":"1997","discontinued":"2001","note":""}');
INSERT INTO history VALUES(40,2,'design',X'01a216c6153471b7ae2db220f96ea9a2',NULL,'{"id":"01a216c6153471b7ae2db220f96ea9a2","kind":"monitor","maker":"Vesperlyn","model":"V14","revision":"","introduced":"1990","discontinued":"1995","note":""}');
INSERT INTO history VALUES(41,2,'design',X'01a216c6153471b7ae2db22298347e5f',NULL,'{"id":"01a216c6153471b7ae2db22298347e5f","kind":"monitor","maker":"Vesperlyn","model":"V17S","revision":"","introduced":"1997","discontinued":"2002","note":""}');
INSERT INTO history VALUES(42,2,'design_connector',X'01a216c6153375ac87d6cd1862cbf649',NULL,'{"id":"01a216c6153375ac87d6cd1862cbf649","design":"01a216c6153375ac87d6cd1736f7b7fc","side":"offers","connector":"isa-16","count":5,"note":""}');
INSERT INTO history VALUES(43,2,'design_connector',X'01a216c6153375ac87d6cd199394c6e2',NULL,'{"id":"01a216c6153375ac87d6cd199394c6e2","design":"01a216c6153375ac87d6cd1736f7b7fc","side":"offers","connector":"isa-8","count":1,"note":""}');
INSERT INTO history VALUES(44,2,'design_connector',X'01a216c6153375ac87d6cd1a26b0eb2c',NULL,'{"id":"01a216c6153375ac87d6cd1a26b0eb2c","design":"01a216c6153375ac87d6cd1736f7b7fc","side":"offers","connector":"keyboard-at-din","count":1,"note":""}');
INSERT INTO history VALUES(45,2,'design_connector',X'01a216c6153375ac87d6cd1be1141d6a',NULL,'{"id":"01a216c6153375ac87d6cd1be1141d6a","design":"01a216c6153375ac87d6cd1736f7b7fc","side":"offers","connector":"simm-30","count":4,"note":""}');
INSERT INTO history VALUES(46,2,'design_connector',X'01a216c6153375ac87d6cd1c6ba65dca',NULL,'{"id":"01a216c6153375ac87d6cd1c6ba65dca","design":"01a216c6153375ac87d6cd1736f7b7fc","side":"needs","connector":"at-p8p9","count":1,"note":""}');
INSERT INTO history VALUES(47,2,'design_connector',X'01a216c6153375ac87d6cd1d619b67ef',NULL,'{"id":"01a216c6153375ac87d6cd1d619b67ef","design":"01a216c6153375ac87d6cd1736f7b7fc","side":"needs","connector":"baby-at","count":1,"note":""}');
INSERT INTO history VALUES(48,2,'design_connector',X'01a216c6153375ac87d6cd222271dc64',NULL,'{"id":"01a216c6153375ac87d6cd222271dc64","design":"01a216c6153375ac87d6cd2175509f20","side":"offers","connector":"isa-16","count":6,"note":""}');
INSERT INTO history VALUES(49,2,'design_connector',X'01a216c6153375ac87d6cd2337553ac5',NULL,'{"id":"01a216c6153375ac87d6cd2337553ac5","design":"01a216c6153375ac87d6cd2175509f20","side":"offers","connector":"isa-8","count":2,"note":""}');
INSERT INTO history VALUES(50,2,'design_connector',X'01a216c6153375ac87d6cd24b225e228',NULL,'{"id":"01a216c6153375ac87d6cd24b225e228","design":"01a216c6153375ac87d6cd2175509f20","side":"offers","connector":"keyboard-at-din","count":1,"note":""}');
INSERT INTO history VALUES(51,2,'design_connector',X'01a216c6153375ac87d6cd25cdcb5d1c',NULL,'{"id":"01a216c6153375ac87d6cd25cdcb5d1c","design":"01a216c6153375ac87d6cd2175509f20","side":"offers","connector":"pga-121-coprocessor","count":1,"note":""}');
INSERT INTO history VALUES(52,2,'design_connector',X'01a216c6153375ac87d6cd268f8ad014',NULL,'{"id":"01a216c6153375ac87d6cd268f8ad014","design":"01a216c6153375ac87d6cd2175509f20","side":"offers","connector":"pga-132","count":1,"note":""}');
INSERT INTO history VALUES(53,2,'design_connector',X'01a216c6153375ac87d6cd277441432f',NULL,'{"id":"01a216c6153375ac87d6cd277441432f","design":"01a216c6153375ac87d6cd2175509f20","side":"offers","connector":"simm-30","count":8,"note":""}');
INSERT INTO history VALUES(54,2,'design_figure',X'01a216c6153375ac87d6cd1e4cf9b02e',NULL,'{"id":"01a216c6153375ac87d6cd1e4cf9b02e","design":"01a216c6153375ac87d6cd1736f7b7fc","figure":"bus_clock_mhz","value":16.0,"source":"Label and print on the part","at_bus_mhz":null}');
INSERT INTO history VALUES(55,2,'design_figure',X'01a216c6153375ac87d6cd1f0cb691b5',NULL,'{"id":"01a216c6153375ac87d6cd1f0cb691b5","design":"01a216c6153375ac87d6cd1736f7b7fc","figure":"current_5v_a","value":2.4,"source":"Label and print on the part","at_bus_mhz":null}');
INSERT INTO history VALUES(56,2,'design_figure',X'01a216c6153375ac87d6cd2009c04e6c',NULL,'{"id":"01a216c6153375ac87d6cd2009c04e6c","design":"01a216c6153375ac87d6cd1736f7b7fc","figure":"memory_most_mb","value":4.0,"source":"Label and print on the part","at_bus_mhz":null}');
INSERT INTO history VALUES(57,2,'design_figure',X'01a216c6153375ac87d6cd2ac5016631',NULL,'{"id":"01a216c6153375ac87d6cd2ac5016631","design":"01a216c6153375ac87d6cd2175509f20","figure":"bus_clock_mhz","value":40.0,"source":"Label and print on the part","at_bus_mhz":null}');
INSERT INTO history VALUES(58,2,'design_figure',X'01a216c6153375ac87d6cd2bf5779f56',NULL,'{"id":"01a216c6153375ac87d6cd2bf5779f56","design":"01a216c6153375ac87d6cd2175509f20","figure":"current_5v_a","value":3.1,"source":"Label and print on the part","at_bus_mhz":null}');
INSERT INTO history VALUES(59,2,'design_figure',X'01a216c6153375ac87d6cd2cfe6c75b2',NULL,'{"id":"01a216c6153375ac87d6cd2cfe6c75b2","design":"01a216c6153375ac87d6cd2175509f20","figure":"memory_most_mb","value":32.0,"source":"Label and print on the part","at_bus_mhz":null}');
INSERT INTO history VALUES(60,2,'design_figure',X'01a216c6153375ac87d6cd3531208e9c',NULL,'{"id":"01a216c6153375ac87d6cd3531208e9c","design":"01a216c6153375ac87d6cd2da07c2f0c","figure":"bus_clock_mhz","value":33.0,"source":"Label and print on the part","at_bus_mhz":null}');
INSERT INTO history VALUES(61,2,'design_figure',X'01a216c6153375ac87d6cd36757fe57b',NULL,'{"id":"01a216c6153375ac87d6cd36757fe57b","design":"01a216c6153375ac87d6cd2da07c2f0c","figure":"current_5v_a","value":2.9,"source":"Label and print on the part","at_bus_mhz":null}');
INSERT INTO history VALUES(62,2,'design_capacitor',X'01a216c617f572068e4f92d33f3b6395',NULL,'{"id":"01a216c617f572068e4f92d33f3b6395","design":"01a216c6153375ac87d6cd7d5fe3dfd9","designator":"C1","place_on_part":"left of the processor","capacitance_uf":1000.0,"voltage_v":6.3,"temperature_c":105.0,"diameter_mm":8.0,"height_mm":16.0,"pitch_mm":null,"dielectric":"wet_aluminium","mounting":"radial","series":"ZQ","polarity":"stripe towards the socket","function":"processor_supply","low_esr":null}');
INSERT INTO history VALUES(63,2,'design_capacitor',X'01a216c617f572068e4f92d4330126a3',NULL,'{"id":"01a216c617f572068e4f92d4330126a3","design":"01a216c6153375ac87d6cd7d5fe3dfd9","designator":"C2","place_on_part":"left of the processor","capacitance_uf":1000.0,"voltage_v":6.3,"temperature_c":105.0,"diameter_mm":8.0,"height_mm":16.0,"pitch_mm":null,"dielectric":"wet_aluminium","mounting":"radial","series":"ZQ","polarity":"stripe towards the socket","function":"processor_supply","low_esr":null}');
INSERT INTO history VALUES(64,2,'design_capacitor',X'01a216c617f572068e4f92d563cb4af8',NULL,'{"id":"01a216c617f572068e4f92d563cb4af8","design":"01a216c6153375ac87d6cd7d5fe3dfd9","designator":"C3","place_on_part":"left of the processor","capacitance_uf":1000.0,"voltage_v":6.3,"temperature_c":105.0,"diameter_mm":8.0,"height_mm":16.0,"pitch_mm":null,"dielectric":"wet_aluminium","mounting":"radial","series":"ZQ","polarity":"stripe towards the socket","function":"processor_supply","low_esr":null}');
INSERT INTO history VALUES(65,2,'design_capacitor',X'01a216c617f572068e4f92d6dc3edc12',NULL,'{"id":"01a216c617f572068e4f92d6dc3edc12","design":"01a216c6153375ac87d6cd7d5fe3dfd9","designator":"C4","place_on_part":"left of the processor, lower down","capacitance_uf":1000.0,"voltage_v":6.3,"temperature_c":105.0,"diameter_mm":8.0,"height_mm":16.0,"pitch_mm":null,"dielectric":"wet_aluminium","mounting":"radial","series":"ZQ","polarity":"stripe towards the socket","function":"processor_supply","low_esr":null}');
INSERT INTO history VALUES(66,2,'design_capacitor',X'01a216c617f572068e4f92d7ad513a27',NULL,'{"id":"01a216c617f572068e4f92d7ad513a27","design":"01a216c6153375ac87d6cd7d5fe3dfd9","designator":"C5","place_on_part":"left of the processor, lower down","capacitance_uf":1000.0,"voltage_v":6.3,"temperature_c":105.0,"diameter_mm":8.0,"height_mm":16.0,"pitch_mm":null,"dielectric":"wet_aluminium","mounting":"radial","series":"ZQ","polarity":"stripe towards the socket","function":"processor_supply","low_esr":null}');
INSERT INTO history VALUES(67,2,'design_capacitor',X'01a216c617f572068e4f92d81a10e78e',NULL,'{"id":"01a216c617f572068e4f92d81a10e78e","design":"01a216c6153375ac87d6cd7d5fe3dfd9","designator":"C6","place_on_part":"left of the processor, lower down","capacitance_uf":1000.0,"voltage_v":6.3,"temperature_c":105.0,"diameter_mm":8.0,"height_mm":16.0,"pitch_mm":null,"dielectric":"wet_aluminium","mounting":"radial","series":"ZQ","polarity":"stripe towards the socket","function":"processor_supply","low_esr":null}');
INSERT INTO history VALUES(68,2,'design_capacitor',X'01a216c617f572068e4f92d9ff61b331',NULL,'{"id":"01a216c617f572068e4f92d9ff61b331","design":"01a216c6153375ac87d6cd7d5fe3dfd9","designator":"C11","place_on_part":"by the memory sockets","capacitance_uf":470.0,"voltage_v":16.0,"temperature_c":105.0,"diameter_mm":8.0,"height_mm":12.0,"pitch_mm":null,"dielectric":"wet_aluminium","mounting":"radial","series":"ZQ","polarity":"","function":null,"low_esr":null}');
INSERT INTO history VALUES(69,2,'design_capacitor',X'01a216c617f572068e4f92da6bb9848f',NULL,'{"id":"01a216c617f572068e4f92da6bb9848f","design":"01a216c6153375ac87d6cd7d5fe3dfd9","designator":"C12","place_on_part":"by the memory sockets","capacitance_uf":470.0,"voltage_v":16.0,"temperature_c":105.0,"diameter_mm":8.0,"height_mm":12.0,"pitch_mm":null,"dielectric":"wet_aluminium","mounting":"radial","series":"ZQ","polarity":"","function":null,"low_esr":null}');
INSERT INTO history VALUES(70,2,'design_capacitor',X'01a216c617f572068e4f92db5c4a15d6',NULL,'{"id":"01a216c617f572068e4f92db5c4a15d6","design":"01a216c6153375ac87d6cd7d5fe3dfd9","designator":"C13","place_on_part":"by the memory sockets","capacitance_uf":470.0,"voltage_v":16.0,"temperature_c":105.0,"diameter_mm":8.0,"height_mm":12.0,"pitch_mm":null,"dielectric":"wet_aluminium","mounting":"radial","series":"ZQ","polarity":"","function":null,"low_esr":null}');
INSERT INTO history VALUES(71,2,'design_capacitor',X'01a216c617f572068e4f92dcfb886b38',NULL,'{"id":"01a216c617f572068e4f92dcfb886b38","design":"01a216c6153375ac87d6cd7d5fe3dfd9","designator":"C14","place_on_part":"by the memory sockets","capacitance_uf":470.0,"voltage_v":16.0,"temperature_c":105.0,"diameter_mm":8.0,"height_mm":12.0,"pitch_mm":null,"dielectric":"wet_aluminium","mounting":"radial","series":"ZQ","polarity":"","function":null,"low_esr":null}');
INSERT INTO history VALUES(72,2,'design_capacitor',X'01a216c617f572068e4f92dda21d5d02',NULL,'{"id":"01a216c617f572068e4f92dda21d5d02","design":"01a216c6153375ac87d6cd7d5fe3dfd9","designator":"C20","place_on_part":"under the heatsink clip","capacitance_uf":100.0,"voltage_v":16.0,"temperature_c":105.0,"diameter_mm":6.3,"height_mm":11.0,"pitch_mm":null,"dielectric":"wet_aluminium","mounting":"radial","series":"","polarity":"","function":null,"low_esr":null}');
INSERT INTO history VALUES(73,2,'material',X'01a216c6153375ac87d6cd082cf49771',NULL,'{"id":"01a216c6153375ac87d6cd082cf49771","name":"White vinegar, or citric acid 5 % in water","unit":"ml","stock":400.0,"minimum":250.0,"place":"01a216c6153375ac87d6ccf4604ad80b","price_cents":1,"supplier":"","note":"","capacitance_uf":null,"voltage_v":null,"temperature_c":null,"diameter_mm":null,"height_mm":null,"pitch_mm":null,"dielectric":null,"mounting":null,"low_esr":null,"on_order":12.0}');
INSERT INTO history VALUES(74,2,'material',X'01a216c6153375ac87d6cd095e6cde2d',NULL,'{"id":"01a216c6153375ac87d6cd095e6cde2d","name":"Alcohol 90 % or more","unit":"ml","stock":150.0,"minimum":500.0,"place":"01a216c6153375ac87d6ccf4604ad80b","price_cents":1,"supplier":"Chemist at the corner","note":"Running low.","capacitance_uf":null,"voltage_v":null,"temperature_c":null,"diameter_mm":null,"height_mm":null,"pitch_mm":null,"dielectric":null,"mounting":null,"low_esr":null,"on_order":0.0}');
INSERT INTO history VALUES(75,2,'material',X'01a216c6153375ac87d6cd0a85255862',NULL,'{"id":"01a216c6153375ac87d6cd0a85255862","name":"Deionised water","unit":"ml","stock":3000.0,"minimum":1000.0,"place":"01a216c6153375ac87d6ccf4604ad80b","price_cents":null,"supplier":"","note":"","capacitance_uf":null,"voltage_v":null,"temperature_c":null,"diameter_mm":null,"height_mm":null,"pitch_mm":null,"dielectric":null,"mounting":null,"low_esr":null,"on_order":0.0}');
INSERT INTO history VALUES(76,2,'material',X'01a216c6153375ac87d6cd0bfe6d48a1',NULL,'{"id":"01a216c6153375ac87d6cd0bfe6d48a1","name":"Contact cleaner","unit":"ml","stock":180.0,"minimum":100.0,"place":"01a216c6153375ac87d6ccf4604ad80b","price_cents":null,"supplier":"","note":"","capacitance_uf":null,"voltage_v":null,"temperature_c":null,"diameter_mm":null,"height_mm":null,"pitch_mm":null,"dielectric":null,"mounting":null,"low_esr":null,"on_order":0.0}');
INSERT INTO history VALUES(77,2,'material',X'01a216c6153375ac87d6cd0cf31b953d',NULL,'{"id":"01a216c6153375ac87d6cd0cf31b953d","name":"Solder","unit":"g","stock":220.0,"minimum":50.0,"place":"01a216c6153375ac87d6ccf4604ad80b","price_cents":null,"supplier":"","note":"","capacitance_uf":null,"voltage_v":null,"temperature_c":null,"diameter_mm":null,"height_mm":null,"pitch_mm":null,"dielectric":null,"mounting":null,"low_esr":null,"on_order":0.0}');
INSERT INTO history VALUES(78,2,'material',X'01a216c6153375ac87d6cd0d9c7e25b9',NULL,'{"id":"01a216c6153375ac87d6cd0d9c7e25b9","name":"Flux","unit":"ml","stock":12.0,"minimum":10.0,"place":"01a216c6153375ac87d6ccf4604ad80b","price_cents":null,"supplier":"","note":"","capacitance_uf":null,"voltage_v":null,"temperature_c":null,"diameter_mm":null,"height_mm":null,"pitch_mm":null,"dielectric":null,"mounting":null,"low_esr":null,"on_order":0.0}');
INSERT INTO history VALUES(79,2,'material',X'01a216c6153375ac87d6cd0e73e0c297',NULL,'{"id":"01a216c6153375ac87d6cd0e73e0c297","name":"Desoldering braid","unit":"m","stock":1.5,"minimum":1.0,"place":"01a216c6153375ac87d6ccf4604ad80b","price_cents":null,"supplier":"","note":"","capacitance_uf":null,"voltage_v":null,"temperature_c":null,"diameter_mm":null,"height_mm":null,"pitch_mm":null,"dielectric":null,"mounting":null,"low_esr":null,"on_order":0.0}');
INSERT INTO history VALUES(80,2,'material',X'01a216c6153375ac87d6cd0f787c50b7',NULL,'{"id":"01a216c6153375ac87d6cd0f787c50b7","name":"Fine tinned or enamelled wire","unit":"m","stock":20.0,"minimum":5.0,"place":"01a216c6153375ac87d6ccf4604ad80b","price_cents":null,"supplier":"","note":"","capacitance_uf":null,"voltage_v":null,"temperature_c":null,"diameter_mm":null,"height_mm":null,"pitch_mm":null,"dielectric":null,"mounting":null,"low_esr":null,"on_order":0.0}');
INSERT INTO history VALUES(81,2,'material',X'01a216c6153375ac87d6cd100afb903b',NULL,'{"id":"01a216c6153375ac87d6cd100afb903b","name":"Capacitor 1000 µF 6.3 V, low ESR, 8 mm","unit":"piece","stock":1.0,"minimum":10.0,"place":"01a216c6153375ac87d6ccfcea893e54","price_cents":35,"supplier":"Hollin Parts by post","note":"One left after the first half of 0071.","capacitance_uf":1000.0,"voltage_v":6.3,"temperature_c":105.0,"diameter_mm":8.0,"height_mm":16.0,"pitch_mm":null,"dielectric":"wet_aluminium","mounting":"radial","low_esr":1,"on_order":0.0}');
INSERT INTO history VALUES(82,2,'material',X'01a216c6153375ac87d6cd11c30fd559',NULL,'{"id":"01a216c6153375ac87d6cd11c30fd559","name":"Capacitor 10 µF 25 V, surface mount","unit":"piece","stock":30.0,"minimum":10.0,"place":"01a216c6153375ac87d6ccfcea893e54","price_cents":18,"supplier":"","note":"","capacitance_uf":10.0,"voltage_v":25.0,"temperature_c":105.0,"diameter_mm":4.0,"height_mm":5.4,"pitch_mm":null,"dielectric":"wet_aluminium","mounting":"surface","low_esr":null,"on_order":0.0}');
INSERT INTO history VALUES(83,2,'material',X'01a216c6153375ac87d6cd12d4d8984b',NULL,'{"id":"01a216c6153375ac87d6cd12d4d8984b","name":"Coin cell CR2032","unit":"piece","stock":6.0,"minimum":4.0,"place":"01a216c6153375ac87d6ccfcea893e54","price_cents":90,"supplier":"","note":"","capacitance_uf":null,"voltage_v":null,"temperature_c":null,"diameter_mm":null,"height_mm":null,"pitch_mm":null,"dielectric":null,"mounting":null,"low_esr":null,"on_order":0.0}');
INSERT INTO history VALUES(84,2,'material',X'01a216c6153375ac87d6cd13743d7f3d',NULL,'{"id":"01a216c6153375ac87d6cd13743d7f3d","name":"Capacitor 470 µF 16 V, 8 mm","unit":"piece","stock":9.0,"minimum":0.0,"place":"01a216c6153375ac87d6ccfcea893e54","price_cents":22,"supplier":"","note":"","capacitance_uf":470.0,"voltage_v":16.0,"temperature_c":105.0,"diameter_mm":8.0,"height_mm":11.5,"pitch_mm":null,"dielectric":"wet_aluminium","mounting":"radial","low_esr":null,"on_order":0.0}');
INSERT INTO history VALUES(85,2,'material',X'01a216c6153375ac87d6cd142efc9e1a',NULL,'{"id":"01a216c6153375ac87d6cd142efc9e1a","name":"Thermal paste","unit":"g","stock":8.0,"minimum":3.0,"place":"01a216c6153375ac87d6ccf4604ad80b","price_cents":null,"supplier":"","note":"","capacitance_uf":null,"voltage_v":null,"temperature_c":null,"diameter_mm":null,"height_mm":null,"pitch_mm":null,"dielectric":null,"mounting":null,"low_esr":null,"on_order":0.0}');
INSERT INTO history VALUES(86,2,'material',X'01a216c6153375ac87d6cd15de7780dd',NULL,'{"id":"01a216c6153375ac87d6cd15de7780dd","name":"Plastic-safe grease","unit":"g","stock":25.0,"minimum":10.0,"place":"01a216c6153375ac87d6ccf4604ad80b","price_cents":null,"supplier":"","note":"","capacitance_uf":null,"voltage_v":null,"temperature_c":null,"diameter_mm":null,"height_mm":null,"pitch_mm":null,"dielectric":null,"mounting":null,"low_esr":null,"on_order":0.0}');
INSERT INTO history VALUES(87,2,'material',X'01a216c6153375ac87d6cd16a29c0024',NULL,'{"id":"01a216c6153375ac87d6cd16a29c0024","name":"Shielding bag","unit":"piece","stock":35.0,"minimum":20.0,"place":"01a216c6153375ac87d6ccf50b3aa145","price_cents":25,"supplier":"","note":"","capacitance_uf":null,"voltage_v":null,"temperature_c":null,"diameter_mm":null,"height_mm":null,"pitch_mm":null,"dielectric":null,"mounting":null,"low_esr":null,"on_order":0.0}');
INSERT INTO history VALUES(88,2,'part',X'01a216c61565721a98c06b153ffd047e',NULL,'{"id":"01a216c61565721a98c06b153ffd047e","tag":"0001","kind":"mainboard","design":"01a216c6153375ac87d6cd1736f7b7fc","name":"","serial":"A286-014417","originality":"original","lot":"01a216c6153375ac87d6cd028d3c1e3b","price_cents":1500,"acquired":"","place":"01a216c6153375ac87d6cd01c0b37be3","inside":null,"quarantine":"","quarantined":"","note":""}');
INSERT INTO history VALUES(89,2,'part',X'01a216c61565721a98c06b196494c08c',NULL,'{"id":"01a216c61565721a98c06b196494c08c","tag":"0005","kind":"memory_module","design":"01a216c6153375ac87d6cdb7033ead36","name":"","serial":"","originality":"original","lot":"01a216c6153375ac87d6cd028d3c1e3b","price_cents":200,"acquired":"","place":"01a216c6153375ac87d6cd01c0b37be3","inside":null,"quarantine":"","quarantined":"","note":""}');
INSERT INTO history VALUES(90,2,'part',X'01a216c61565721a98c06b1abacab539',NULL,'{"id":"01a216c61565721a98c06b1abacab539","tag":"0006","kind":"video_card","design":"01a216c6153375ac87d6cdd46d08d1db","name":"","serial":"","originality":"original","lot":"01a216c6153375ac87d6cd028d3c1e3b","price_cents":600,"acquired":"","place":"01a216c6153375ac87d6cd01c0b37be3","inside":null,"quarantine":"","quarantined":"","note":""}');
INSERT INTO history VALUES(91,2,'part',X'01a216c61565721a98c06b1e807dd967',NULL,'{"id":"01a216c61565721a98c06b1e807dd967","tag":"0010","kind":"power_supply","design":"01a216c6153471b7ae2db1e8ac5c5098","name":"","serial":"GV200-88120","originality":"original","lot":"01a216c6153375ac87d6cd028d3c1e3b","price_cents":1000,"acquired":"","place":"01a216c6153375ac87d6cd01c0b37be3","inside":null,"quarantine":"","quarantined":"","note":""}');
INSERT INTO history VALUES(92,2,'part',X'01a216c61565721a98c06b21eaae18fc',NULL,'{"id":"01a216c61565721a98c06b21eaae18fc","tag":"0013","kind":"mainboard","design":"01a216c6153375ac87d6cd46fea7b34a","name":"","serial":"QB4-77120","originality":"original","lot":"01a216c6153375ac87d6cd03bcea2e28","price_cents":2500,"acquired":"","place":"01a216c6153375ac87d6cd01c0b37be3","inside":null,"quarantine":"","quarantined":"","note":""}');
INSERT INTO history VALUES(93,2,'part',X'01a216c61565721a98c06b2bd7b34964',NULL,'{"id":"01a216c61565721a98c06b2bd7b34964","tag":"0023","kind":"mainboard","design":"01a216c6153375ac87d6cd38fb0e5853","name":"","serial":"A486-22071","originality":"original","lot":"01a216c6153375ac87d6cd042ea834dd","price_cents":4000,"acquired":"","place":"01a216c6153375ac87d6cd01c0b37be3","inside":null,"quarantine":"","quarantined":"","note":""}');
INSERT INTO history VALUES(94,2,'part',X'01a216c61565721a98c06b36e1a5a538',NULL,'{"id":"01a216c61565721a98c06b36e1a5a538","tag":"0034","kind":"mainboard","design":"01a216c6153375ac87d6cd2175509f20","name":"","serial":"A386-100931","originality":"original","lot":"01a216c6153375ac87d6cd028d3c1e3b","price_cents":2000,"acquired":"","place":"01a216c6153375ac87d6ccf68f0bd74a","inside":null,"quarantine":"","quarantined":"","note":"The school''s own board, with a rusty past: cleaned, tracks mended, not started since."}');
INSERT INTO history VALUES(95,2,'part',X'01a216c61565721a98c06b37ad760c92',NULL,'{"id":"01a216c61565721a98c06b37ad760c92","tag":"0035","kind":"mainboard","design":"01a216c6153375ac87d6cd2da07c2f0c","name":"","serial":"QB3-20318","originality":"original","lot":"01a216c6153375ac87d6cd03bcea2e28","price_cents":1800,"acquired":"","place":"01a216c6153375ac87d6ccf68f0bd74a","inside":null,"quarantine":"","quarantined":"","note":""}');
INSERT INTO history VALUES(96,2,'part',X'01a216c61565721a98c06b460edb198b',NULL,'{"id":"01a216c61565721a98c06b460edb198b","tag":"0050","kind":"sound_card","design":"01a216c6153471b7ae2db164b12f80bc","name":"","serial":"","originality":"original","lot":"01a216c6153375ac87d6cd03bcea2e28","price_cents":800,"acquired":"","place":"01a216c6153375ac87d6cd01c0b37be3","inside":null,"quarantine":"","quarantined":"","note":""}');
INSERT INTO history VALUES(97,2,'part',X'01a216c61565721a98c06b4f131d95da',NULL,'{"id":"01a216c61565721a98c06b4f131d95da","tag":"0059","kind":"processor","design":"01a216c6153375ac87d6cda915dc7c20","name":"","serial":"L1450-220","originality":"original","lot":"01a216c6153375ac87d6cd0766737cd7","price_cents":2000,"acquired":"","place":"01a216c6153375ac87d6ccf8b51fe81e","inside":null,"quarantine":"","quarantined":"","note":"Posts and support stayed in the scrapped board. Without them the card rocks in its slot."}');
INSERT INTO history VALUES(98,2,'part',X'01a216c61565721a98c06b50a358ebf0',NULL,'{"id":"01a216c61565721a98c06b50a358ebf0","tag":"0060","kind":"memory_module","design":"01a216c6153375ac87d6cdbfb6544369","name":"","serial":"","originality":"original","lot":"01a216c6153375ac87d6cd0766737cd7","price_cents":500,"acquired":"","place":"01a216c6153375ac87d6cd01c0b37be3","inside":null,"quarantine":"","quarantined":"","note":""}');
INSERT INTO history VALUES(99,2,'part',X'01a216c61565721a98c06b58f941d1fd',NULL,'{"id":"01a216c61565721a98c06b58f941d1fd","tag":"0068","kind":"power_supply","design":"01a216c6153471b7ae2db1fd041c60af","name":"","serial":"GVX-99-7712","originality":"original","lot":"01a216c6153375ac87d6cd0766737cd7","price_cents":900,"acquired":"","place":"01a216c6153375ac87d6cd01c0b37be3","inside":null,"quarantine":"","quarantined":"","note":""}');
INSERT INTO history VALUES(100,2,'part',X'01a216c61565721a98c06b5b91a71d8e',NULL,'{"id":"01a216c61565721a98c06b5b91a71d8e","tag":"0071","kind":"mainboard","design":"01a216c6153375ac87d6cd7d5fe3dfd9","name":"","serial":"W370-01-2290","originality":"original","lot":"01a216c6153375ac87d6cd042ea834dd","price_cents":1500,"acquired":"","place":"01a216c6153375ac87d6cd01c0b37be3","inside":null,"quarantine":"","quarantined":"","note":""}');
INSERT INTO history VALUES(101,2,'part',X'01a216c61565721a98c06b5e8efdf77f',NULL,'{"id":"01a216c61565721a98c06b5e8efdf77f","tag":"0074","kind":"memory_module","design":"01a216c6153375ac87d6cdbfb6544369","name":"","serial":"","originality":"original","lot":"01a216c6153375ac87d6cd042ea834dd","price_cents":400,"acquired":"","place":"01a216c6153375ac87d6cd01c0b37be3","inside":null,"quarantine":"","quarantined":"","note":""}');
INSERT INTO history VALUES(102,2,'part',X'01a216c61565721a98c06b62c4ad9e9c',NULL,'{"id":"01a216c61565721a98c06b62c4ad9e9c","tag":"0078","kind":"power_supply","design":"01a216c6153471b7ae2db1fd041c60af","name":"","serial":"GVX-01-1002","originality":"original","lot":"01a216c6153375ac87d6cd042ea834dd","price_cents":700,"acquired":"","place":"01a216c6153375ac87d6cd01c0b37be3","inside":null,"quarantine":"","quarantined":"","note":""}');
INSERT INTO history VALUES(103,2,'part',X'01a216c61565721a98c06b6ea61d6586',NULL,'{"id":"01a216c61565721a98c06b6ea61d6586","tag":"0090","kind":"sound_card","design":"01a216c6153471b7ae2db15fddaccc54","name":"","serial":"C8-0771","originality":"original","lot":"01a216c6153375ac87d6cd0648dfd33f","price_cents":1800,"acquired":"","place":"01a216c6153375ac87d6ccf7ee1151b3","inside":null,"quarantine":"","quarantined":"","note":"Silent without −5 V: check the supply before blaming the card."}');
INSERT INTO history VALUES(104,2,'part',X'01a216c615667613b44892808f06a4da',NULL,'{"id":"01a216c615667613b44892808f06a4da","tag":"0105","kind":"monitor","design":"01a216c6153471b7ae2db220f96ea9a2","name":"","serial":"V14-91-2207","originality":"original","lot":null,"price_cents":null,"acquired":"2026-07","place":"01a216c6153375ac87d6cd01c0b37be3","inside":null,"quarantine":"","quarantined":"","note":"On loan for the exhibit."}');
INSERT INTO history VALUES(105,2,'part',X'01a216c615667613b44892814466601f',NULL,'{"id":"01a216c615667613b44892814466601f","tag":"0106","kind":"monitor","design":"01a216c6153471b7ae2db22298347e5f","name":"","serial":"","originality":"original","lot":"01a216c6153375ac87d6cd0766737cd7","price_cents":1500,"acquired":"","place":null,"inside":null,"quarantine":"","quarantined":"","note":"Lent for a school play; due back."}');
INSERT INTO history VALUES(106,2,'part',X'01a216c615667613b44892890bdcc2e3',NULL,'{"id":"01a216c615667613b44892890bdcc2e3","tag":"0114","kind":"power_supply","design":"01a216c6153471b7ae2db1f3d9922ad1","name":"","serial":"GV230-55120","originality":"original","lot":"01a216c6153375ac87d6cd05f58ff9fb","price_cents":0,"acquired":"","place":null,"inside":null,"quarantine":"","quarantined":"","note":""}');
INSERT INTO history VALUES(107,2,'machine',X'01a216c617cd741c848f9ea8a85605b9',NULL,'{"id":"01a216c617cd741c848f9ea8a85605b9","name":"The front desk, 1989","purpose":"Visitors type their name into a guest book, as at the desk of a small firm.","window_from":"1988","window_to":"1990","standing":"typical","priority":2,"note":"Nearly there: only the clock still wants a supply, so that the date holds overnight."}');
INSERT INTO history VALUES(108,2,'machine',X'01a216c617e372fd8372798b27dd465d',NULL,'{"id":"01a216c617e372fd8372798b27dd465d","name":"The schoolroom, 1991","purpose":"A pupil''s first lines of a program, as in the computer room of Marshwick Lane School.","window_from":"1990","window_to":"1992","standing":"typical","priority":4,"note":"No supply, disk or case yet. Two boards would suit; the decision is open."}');
INSERT INTO history VALUES(109,2,'machine',X'01a216c617f070cc8c93ec48860cbb5d',NULL,'{"id":"01a216c617f070cc8c93ec48860cbb5d","name":"The net café, 2001","purpose":"Ten minutes a coin: a browser, a chat, a queue behind you.","window_from":"2000","window_to":"2002","standing":"modest","priority":7,"note":"Three of six capacitors round the processor are new; the others are on order. No power before the rest is done."}');
INSERT INTO history VALUES(110,2,'role',X'01a216c617cd741c848f9ea9736d8259',NULL,'{"id":"01a216c617cd741c848f9ea9736d8259","machine":"01a216c617cd741c848f9ea8a85605b9","kind":"mainboard","name":"","required":1,"count":1,"note":"","or_kinds":"[]"}');
INSERT INTO history VALUES(111,2,'role',X'01a216c617cd741c848f9eab6b5d2d1b',NULL,'{"id":"01a216c617cd741c848f9eab6b5d2d1b","machine":"01a216c617cd741c848f9ea8a85605b9","kind":"memory_module","name":"Memory, one bank","required":1,"count":4,"note":"","or_kinds":"[]"}');
INSERT INTO history VALUES(112,2,'role',X'01a216c617cd741c848f9eb0148d67a9',NULL,'{"id":"01a216c617cd741c848f9eb0148d67a9","machine":"01a216c617cd741c848f9ea8a85605b9","kind":"video_card","name":"","required":1,"count":1,"note":"","or_kinds":"[]"}');
INSERT INTO history VALUES(113,2,'role',X'01a216c617cd741c848f9eb20b01d0d5',NULL,'{"id":"01a216c617cd741c848f9eb20b01d0d5","machine":"01a216c617cd741c848f9ea8a85605b9","kind":"multi_io_card","name":"","required":1,"count":1,"note":"","or_kinds":"[]"}');
INSERT INTO history VALUES(114,2,'role',X'01a216c617cd741c848f9eb49bb80883',NULL,'{"id":"01a216c617cd741c848f9eb49bb80883","machine":"01a216c617cd741c848f9ea8a85605b9","kind":"hard_disk","name":"","required":1,"count":1,"note":"","or_kinds":"[]"}');
INSERT INTO history VALUES(115,2,'role',X'01a216c617cd741c848f9eb676534c95',NULL,'{"id":"01a216c617cd741c848f9eb676534c95","machine":"01a216c617cd741c848f9ea8a85605b9","kind":"floppy_drive","name":"","required":1,"count":1,"note":"","or_kinds":"[]"}');
INSERT INTO history VALUES(116,2,'role',X'01a216c617cd741c848f9eb897fe00ec',NULL,'{"id":"01a216c617cd741c848f9eb897fe00ec","machine":"01a216c617cd741c848f9ea8a85605b9","kind":"power_supply","name":"","required":1,"count":1,"note":"","or_kinds":"[]"}');
INSERT INTO history VALUES(117,2,'role',X'01a216c617cd741c848f9eba9345687e',NULL,'{"id":"01a216c617cd741c848f9eba9345687e","machine":"01a216c617cd741c848f9ea8a85605b9","kind":"case","name":"","required":1,"count":1,"note":"","or_kinds":"[]"}');
INSERT INTO history VALUES(118,2,'role',X'01a216c617cd741c848f9ebcb926ad0c',NULL,'{"id":"01a216c617cd741c848f9ebcb926ad0c","machine":"01a216c617cd741c848f9ea8a85605b9","kind":"keyboard","name":"","required":1,"count":1,"note":"","or_kinds":"[]"}');
INSERT INTO history VALUES(119,2,'role',X'01a216c617cd741c848f9ebec599ef34',NULL,'{"id":"01a216c617cd741c848f9ebec599ef34","machine":"01a216c617cd741c848f9ea8a85605b9","kind":"monitor","name":"","required":0,"count":1,"note":"White phosphor suits the year.","or_kinds":"[]"}');
INSERT INTO history VALUES(120,2,'role',X'01a216c617e372fd8372798c7679a043',NULL,'{"id":"01a216c617e372fd8372798c7679a043","machine":"01a216c617e372fd8372798b27dd465d","kind":"mainboard","name":"","required":1,"count":1,"note":"","or_kinds":"[]"}');
INSERT INTO history VALUES(121,2,'role',X'01a216c617e372fd8372798fe664bb7d',NULL,'{"id":"01a216c617e372fd8372798fe664bb7d","machine":"01a216c617e372fd8372798b27dd465d","kind":"processor","name":"","required":1,"count":1,"note":"","or_kinds":"[]"}');
INSERT INTO history VALUES(122,2,'role',X'01a216c617e372fd83727991b16101b5',NULL,'{"id":"01a216c617e372fd83727991b16101b5","machine":"01a216c617e372fd8372798b27dd465d","kind":"coprocessor","name":"","required":0,"count":1,"note":"","or_kinds":"[]"}');
INSERT INTO history VALUES(123,2,'role',X'01a216c617e372fd83727993eec9a1a9',NULL,'{"id":"01a216c617e372fd83727993eec9a1a9","machine":"01a216c617e372fd8372798b27dd465d","kind":"memory_module","name":"Memory, one bank","required":1,"count":4,"note":"","or_kinds":"[]"}');
INSERT INTO history VALUES(124,2,'role',X'01a216c617e372fd83727998f800da81',NULL,'{"id":"01a216c617e372fd83727998f800da81","machine":"01a216c617e372fd8372798b27dd465d","kind":"video_card","name":"","required":1,"count":1,"note":"","or_kinds":"[]"}');
INSERT INTO history VALUES(125,2,'role',X'01a216c617e372fd8372799a233ab23f',NULL,'{"id":"01a216c617e372fd8372799a233ab23f","machine":"01a216c617e372fd8372798b27dd465d","kind":"multi_io_card","name":"","required":1,"count":1,"note":"","or_kinds":"[]"}');
INSERT INTO history VALUES(126,2,'role',X'01a216c617e372fd8372799b2a30e0ac',NULL,'{"id":"01a216c617e372fd8372799b2a30e0ac","machine":"01a216c617e372fd8372798b27dd465d","kind":"hard_disk","name":"","required":1,"count":1,"note":"","or_kinds":"[]"}');
INSERT INTO history VALUES(127,2,'role',X'01a216c617e372fd8372799c1f7bc9f1',NULL,'{"id":"01a216c617e372fd8372799c1f7bc9f1","machine":"01a216c617e372fd8372798b27dd465d","kind":"floppy_drive","name":"","required":1,"count":1,"note":"","or_kinds":"[]"}');
INSERT INTO history VALUES(128,2,'role',X'01a216c617e372fd8372799e29a818c6',NULL,'{"id":"01a216c617e372fd8372799e29a818c6","machine":"01a216c617e372fd8372798b27dd465d","kind":"power_supply","name":"","required":1,"count":1,"note":"","or_kinds":"[]"}');
INSERT INTO history VALUES(129,2,'role',X'01a216c617e372fd8372799f86c42bd1',NULL,'{"id":"01a216c617e372fd8372799f86c42bd1","machine":"01a216c617e372fd8372798b27dd465d","kind":"case","name":"","required":1,"count":1,"note":"A flat one, as in the school.","or_kinds":"[]"}');
INSERT INTO history VALUES(130,2,'role',X'01a216c617e372fd837279a05052331a',NULL,'{"id":"01a216c617e372fd837279a05052331a","machine":"01a216c617e372fd8372798b27dd465d","kind":"keyboard","name":"","required":1,"count":1,"note":"","or_kinds":"[]"}');
INSERT INTO history VALUES(131,2,'role',X'01a216c617f070cc8c93ec491ddca3d5',NULL,'{"id":"01a216c617f070cc8c93ec491ddca3d5","machine":"01a216c617f070cc8c93ec48860cbb5d","kind":"mainboard","name":"","required":1,"count":1,"note":"","or_kinds":"[]"}');
INSERT INTO history VALUES(132,2,'role',X'01a216c617f070cc8c93ec4b20e1343f',NULL,'{"id":"01a216c617f070cc8c93ec4b20e1343f","machine":"01a216c617f070cc8c93ec48860cbb5d","kind":"processor","name":"","required":1,"count":1,"note":"","or_kinds":"[]"}');
INSERT INTO history VALUES(133,2,'role',X'01a216c617f070cc8c93ec4d1dc362e4',NULL,'{"id":"01a216c617f070cc8c93ec4d1dc362e4","machine":"01a216c617f070cc8c93ec48860cbb5d","kind":"cooler","name":"","required":1,"count":1,"note":"","or_kinds":"[]"}');
INSERT INTO history VALUES(134,2,'role',X'01a216c617f070cc8c93ec4f0ce2fedf',NULL,'{"id":"01a216c617f070cc8c93ec4f0ce2fedf","machine":"01a216c617f070cc8c93ec48860cbb5d","kind":"memory_module","name":"","required":1,"count":1,"note":"","or_kinds":"[]"}');
INSERT INTO history VALUES(135,2,'role',X'01a216c617f070cc8c93ec51e0e011e7',NULL,'{"id":"01a216c617f070cc8c93ec51e0e011e7","machine":"01a216c617f070cc8c93ec48860cbb5d","kind":"video_card","name":"","required":1,"count":1,"note":"","or_kinds":"[]"}');
INSERT INTO history VALUES(136,2,'role',X'01a216c617f070cc8c93ec532164a5dc',NULL,'{"id":"01a216c617f070cc8c93ec532164a5dc","machine":"01a216c617f070cc8c93ec48860cbb5d","kind":"network_card","name":"","required":1,"count":1,"note":"","or_kinds":"[]"}');
INSERT INTO history VALUES(137,2,'role',X'01a216c617f070cc8c93ec55ee22eb1c',NULL,'{"id":"01a216c617f070cc8c93ec55ee22eb1c","machine":"01a216c617f070cc8c93ec48860cbb5d","kind":"hard_disk","name":"","required":1,"count":1,"note":"","or_kinds":"[]"}');
INSERT INTO history VALUES(138,2,'role',X'01a216c617f070cc8c93ec57de33689a',NULL,'{"id":"01a216c617f070cc8c93ec57de33689a","machine":"01a216c617f070cc8c93ec48860cbb5d","kind":"power_supply","name":"","required":1,"count":1,"note":"","or_kinds":"[]"}');
INSERT INTO history VALUES(139,2,'role',X'01a216c617f070cc8c93ec59d9b8aef5',NULL,'{"id":"01a216c617f070cc8c93ec59d9b8aef5","machine":"01a216c617f070cc8c93ec48860cbb5d","kind":"case","name":"","required":1,"count":1,"note":"","or_kinds":"[]"}');
INSERT INTO history VALUES(140,2,'role',X'01a216c617f070cc8c93ec5b0d53586f',NULL,'{"id":"01a216c617f070cc8c93ec5b0d53586f","machine":"01a216c617f070cc8c93ec48860cbb5d","kind":"keyboard","name":"","required":1,"count":1,"note":"","or_kinds":"[]"}');
INSERT INTO history VALUES(141,2,'placement',X'01a216c617e372fd8372798d3a9fa241',NULL,'{"id":"01a216c617e372fd8372798d3a9fa241","machine":"01a216c617e372fd8372798b27dd465d","role":"01a216c617e372fd8372798c7679a043","part":"01a216c61565721a98c06b36e1a5a538","pinned":0,"planned_on":"2026-06-29","planned_sequence":417,"reason":"Decide after the bench start of 0035."}');
INSERT INTO history VALUES(142,2,'placement',X'01a216c617e372fd8372798e9bc176f8',NULL,'{"id":"01a216c617e372fd8372798e9bc176f8","machine":"01a216c617e372fd8372798b27dd465d","role":"01a216c617e372fd8372798c7679a043","part":"01a216c61565721a98c06b37ad760c92","pinned":0,"planned_on":"2026-06-29","planned_sequence":418,"reason":"Decide after the bench start of 0035."}');
INSERT INTO history VALUES(143,2,'fitting',X'01a216c617cd741c848f9eaaac763105',NULL,'{"id":"01a216c617cd741c848f9eaaac763105","machine":"01a216c617cd741c848f9ea8a85605b9","role":"01a216c617cd741c848f9ea9736d8259","part":"01a216c61565721a98c06b153ffd047e","fitted_on":"2026-10-12","fitted_sequence":372,"removed_on":null,"removed_sequence":null,"note":""}');
INSERT INTO history VALUES(144,2,'fitting',X'01a216c617cd741c848f9eafee395e62',NULL,'{"id":"01a216c617cd741c848f9eafee395e62","machine":"01a216c617cd741c848f9ea8a85605b9","role":"01a216c617cd741c848f9eab6b5d2d1b","part":"01a216c61565721a98c06b196494c08c","fitted_on":"2026-10-12","fitted_sequence":376,"removed_on":null,"removed_sequence":null,"note":""}');
INSERT INTO history VALUES(145,2,'fitting',X'01a216c617cd741c848f9eb11fb09cd6',NULL,'{"id":"01a216c617cd741c848f9eb11fb09cd6","machine":"01a216c617cd741c848f9ea8a85605b9","role":"01a216c617cd741c848f9eb0148d67a9","part":"01a216c61565721a98c06b1abacab539","fitted_on":"2026-10-12","fitted_sequence":377,"removed_on":null,"removed_sequence":null,"note":""}');
INSERT INTO history VALUES(146,2,'fitting',X'01a216c617cd741c848f9eb9f5c833b4',NULL,'{"id":"01a216c617cd741c848f9eb9f5c833b4","machine":"01a216c617cd741c848f9ea8a85605b9","role":"01a216c617cd741c848f9eb897fe00ec","part":"01a216c61565721a98c06b1e807dd967","fitted_on":"2026-10-12","fitted_sequence":381,"removed_on":null,"removed_sequence":null,"note":""}');
INSERT INTO history VALUES(147,2,'fitting',X'01a216c617cd741c848f9ebfd26da8bf',NULL,'{"id":"01a216c617cd741c848f9ebfd26da8bf","machine":"01a216c617cd741c848f9ea8a85605b9","role":"01a216c617cd741c848f9ebec599ef34","part":"01a216c615667613b44892808f06a4da","fitted_on":"2026-10-12","fitted_sequence":384,"removed_on":null,"removed_sequence":null,"note":""}');
INSERT INTO history VALUES(148,2,'fitting',X'01a216c617f070cc8c93ec4a80daedf5',NULL,'{"id":"01a216c617f070cc8c93ec4a80daedf5","machine":"01a216c617f070cc8c93ec48860cbb5d","role":"01a216c617f070cc8c93ec491ddca3d5","part":"01a216c61565721a98c06b5b91a71d8e","fitted_on":"2026-11-11","fitted_sequence":454,"removed_on":null,"removed_sequence":null,"note":""}');
INSERT INTO history VALUES(149,2,'fitting',X'01a216c617f070cc8c93ec50af74c84d',NULL,'{"id":"01a216c617f070cc8c93ec50af74c84d","machine":"01a216c617f070cc8c93ec48860cbb5d","role":"01a216c617f070cc8c93ec4f0ce2fedf","part":"01a216c61565721a98c06b5e8efdf77f","fitted_on":"2026-11-11","fitted_sequence":457,"removed_on":null,"removed_sequence":null,"note":""}');
INSERT INTO history VALUES(150,2,'fitting',X'01a216c617f070cc8c93ec58e2bce4de',NULL,'{"id":"01a216c617f070cc8c93ec58e2bce4de","machine":"01a216c617f070cc8c93ec48860cbb5d","role":"01a216c617f070cc8c93ec57de33689a","part":"01a216c61565721a98c06b62c4ad9e9c","fitted_on":"2026-11-11","fitted_sequence":461,"removed_on":null,"removed_sequence":null,"note":""}');
INSERT INTO history VALUES(151,2,'power_on',X'01a216c617cd741c848f9ec21543889f',NULL,'{"id":"01a216c617cd741c848f9ec21543889f","machine":"01a216c617cd741c848f9ea8a85605b9","switched_on":"2026-10-13","switched_sequence":387,"configuration":"Board, one bank of memory, video, multi-I/O; then floppy; then disk.","settings":"Board jumpers as noted; disk as only drive.","steps":"Three seconds, off, felt all parts. Then to the first picture. Floppy, disk, keyboard one by one.","result":"well","happened":"Checksum message because nothing feeds the clock; otherwise straight to the prompt.","who":"Ines Marlow"}');
INSERT INTO history VALUES(152,2,'marking',X'01a216c615667613b448928a7f6f15cf',NULL,'{"id":"01a216c615667613b448928a7f6f15cf","part":"01a216c61565721a98c06b153ffd047e","read_on":"2024-12-26","read_sequence":1,"surface":"board","place_on_part":"lower edge","text":"9012","from_factory":"yes","scheme":"","supersedes":null,"note":""}');
INSERT INTO history VALUES(153,2,'marking',X'01a216c615667613b448928b4188f4d4',NULL,'{"id":"01a216c615667613b448928b4188f4d4","part":"01a216c61565721a98c06b153ffd047e","read_on":"2024-12-26","read_sequence":2,"surface":"chip","place_on_part":"chip set","text":"LR8215 8947","from_factory":"yes","scheme":"","supersedes":null,"note":""}');
INSERT INTO history VALUES(154,2,'marking',X'01a216c615667613b448928c4112c992',NULL,'{"id":"01a216c615667613b448928c4112c992","part":"01a216c61565721a98c06b153ffd047e","read_on":"2024-12-26","read_sequence":3,"surface":"chip","place_on_part":"keyboard controller","text":"QX8742 9003","from_factory":"yes","scheme":"","supersedes":null,"note":""}');
INSERT INTO history VALUES(155,2,'marking',X'01a216c615897242bbdd45aef7404a80',NULL,'{"id":"01a216c615897242bbdd45aef7404a80","part":"01a216c61565721a98c06b1abacab539","read_on":"2025-04-05","read_sequence":23,"surface":"board","place_on_part":"solder side","text":"8951","from_factory":"yes","scheme":"","supersedes":null,"note":""}');
INSERT INTO history VALUES(156,2,'marking',X'01a216c615897242bbdd45af50e774f0',NULL,'{"id":"01a216c615897242bbdd45af50e774f0","part":"01a216c61565721a98c06b1abacab539","read_on":"2025-04-05","read_sequence":24,"surface":"chip","place_on_part":"main chip","text":"ORB8 8946","from_factory":"yes","scheme":"","supersedes":null,"note":""}');
INSERT INTO history VALUES(157,2,'marking',X'01a216c615bd70cbb9e642e0003524e7',NULL,'{"id":"01a216c615bd70cbb9e642e0003524e7","part":"01a216c61565721a98c06b1e807dd967","read_on":"2025-04-05","read_sequence":39,"surface":"sticker","place_on_part":"lid","text":"WEEK 08 1990","from_factory":"yes","scheme":"","supersedes":null,"note":""}');
INSERT INTO history VALUES(158,2,'marking',X'01a216c615d5771f90e84cd62df59920',NULL,'{"id":"01a216c615d5771f90e84cd62df59920","part":"01a216c61565721a98c06b21eaae18fc","read_on":"2025-07-14","read_sequence":52,"surface":"board","place_on_part":"beside the slots","text":"9427","from_factory":"yes","scheme":"","supersedes":null,"note":""}');
INSERT INTO history VALUES(159,2,'marking',X'01a216c615d5771f90e84cd70e7e16a5',NULL,'{"id":"01a216c615d5771f90e84cd70e7e16a5","part":"01a216c61565721a98c06b21eaae18fc","read_on":"2025-07-14","read_sequence":53,"surface":"chip","place_on_part":"chip set","text":"QX4210 9419","from_factory":"yes","scheme":"","supersedes":null,"note":""}');
INSERT INTO history VALUES(160,2,'marking',X'01a216c615d5771f90e84cd8e3048f01',NULL,'{"id":"01a216c615d5771f90e84cd8e3048f01","part":"01a216c61565721a98c06b21eaae18fc","read_on":"2025-07-14","read_sequence":54,"surface":"sticker","place_on_part":"firmware chip","text":"07/94","from_factory":"yes","scheme":"","supersedes":null,"note":""}');
INSERT INTO history VALUES(161,2,'marking',X'01a216c6160176d792712b578c62eb3e',NULL,'{"id":"01a216c6160176d792712b578c62eb3e","part":"01a216c61565721a98c06b2bd7b34964","read_on":"2025-12-31","read_sequence":82,"surface":"board","place_on_part":"by the memory sockets","text":"9313","from_factory":"yes","scheme":"","supersedes":null,"note":""}');
INSERT INTO history VALUES(162,2,'marking',X'01a216c6160176d792712b58607ad259',NULL,'{"id":"01a216c6160176d792712b58607ad259","part":"01a216c61565721a98c06b2bd7b34964","read_on":"2025-12-31","read_sequence":83,"surface":"chip","place_on_part":"chip set","text":"LR8401 9304","from_factory":"yes","scheme":"","supersedes":null,"note":""}');
INSERT INTO history VALUES(163,2,'marking',X'01a216c6164573e79d247286c2cf4306',NULL,'{"id":"01a216c6164573e79d247286c2cf4306","part":"01a216c61565721a98c06b36e1a5a538","read_on":"2024-11-16","read_sequence":132,"surface":"board","place_on_part":"lower edge","text":"9126","from_factory":"yes","scheme":"","supersedes":null,"note":""}');
INSERT INTO history VALUES(164,2,'marking',X'01a216c6164573e79d247287311dc1a6',NULL,'{"id":"01a216c6164573e79d247287311dc1a6","part":"01a216c61565721a98c06b36e1a5a538","read_on":"2024-11-16","read_sequence":133,"surface":"chip","place_on_part":"chip set","text":"LR8310 9118","from_factory":"yes","scheme":"","supersedes":null,"note":""}');
INSERT INTO history VALUES(165,2,'marking',X'01a216c6165172e7afd95f610274201d',NULL,'{"id":"01a216c6165172e7afd95f610274201d","part":"01a216c61565721a98c06b37ad760c92","read_on":"2025-06-04","read_sequence":145,"surface":"board","place_on_part":"beside the slots","text":"9204","from_factory":"yes","scheme":"","supersedes":null,"note":""}');
INSERT INTO history VALUES(166,2,'marking',X'01a216c6165172e7afd95f62e89e2c48',NULL,'{"id":"01a216c6165172e7afd95f62e89e2c48","part":"01a216c61565721a98c06b37ad760c92","read_on":"2025-06-04","read_sequence":146,"surface":"chip","place_on_part":"chip set","text":"QX3110 9149","from_factory":"yes","scheme":"","supersedes":null,"note":""}');
INSERT INTO history VALUES(167,2,'marking',X'01a216c6169973aeb546fb8fe96a2c54',NULL,'{"id":"01a216c6169973aeb546fb8fe96a2c54","part":"01a216c61565721a98c06b460edb198b","read_on":"2026-10-22","read_sequence":189,"surface":"board","place_on_part":"upper edge","text":"9535","from_factory":"yes","scheme":"","supersedes":null,"note":""}');
INSERT INTO history VALUES(168,2,'marking',X'01a216c616c974028db1519940c03b77',NULL,'{"id":"01a216c616c974028db1519940c03b77","part":"01a216c61565721a98c06b4f131d95da","read_on":"2026-07-09","read_sequence":207,"surface":"sticker","place_on_part":"cartridge","text":"9906","from_factory":"yes","scheme":"","supersedes":null,"note":""}');
INSERT INTO history VALUES(169,2,'marking',X'01a216c616cd7013b5d309807ca88ec7',NULL,'{"id":"01a216c616cd7013b5d309807ca88ec7","part":"01a216c61565721a98c06b50a358ebf0","read_on":"2026-07-09","read_sequence":210,"surface":"chip","place_on_part":"first chip","text":"TMK 9908","from_factory":"yes","scheme":"","supersedes":null,"note":""}');
INSERT INTO history VALUES(170,2,'marking',X'01a216c616fd76498a564db4036b2065',NULL,'{"id":"01a216c616fd76498a564db4036b2065","part":"01a216c61565721a98c06b5b91a71d8e","read_on":"2025-12-31","read_sequence":235,"surface":"board","place_on_part":"by the last slot","text":"0126","from_factory":"yes","scheme":"","supersedes":null,"note":""}');
INSERT INTO history VALUES(171,2,'marking',X'01a216c616fd76498a564db5726198df',NULL,'{"id":"01a216c616fd76498a564db5726198df","part":"01a216c61565721a98c06b5b91a71d8e","read_on":"2025-12-31","read_sequence":236,"surface":"chip","place_on_part":"chip set","text":"WX3700 0119","from_factory":"yes","scheme":"","supersedes":null,"note":""}');
INSERT INTO history VALUES(172,2,'marking',X'01a216c616fd76498a564db625eaab78',NULL,'{"id":"01a216c616fd76498a564db625eaab78","part":"01a216c61565721a98c06b5b91a71d8e","read_on":"2025-12-31","read_sequence":237,"surface":"capacitor","place_on_part":"C4","text":"0111","from_factory":"yes","scheme":"","supersedes":null,"note":""}');
INSERT INTO history VALUES(173,2,'marking',X'01a216c61755733b99484f9f687ca544',NULL,'{"id":"01a216c61755733b99484f9f687ca544","part":"01a216c61565721a98c06b6ea61d6586","read_on":"2026-05-10","read_sequence":313,"surface":"board","place_on_part":"upper edge","text":"9102","from_factory":"yes","scheme":"","supersedes":null,"note":""}');
INSERT INTO history VALUES(174,2,'marking',X'01a216c61755733b99484fa016ae72cc',NULL,'{"id":"01a216c61755733b99484fa016ae72cc","part":"01a216c61565721a98c06b6ea61d6586","read_on":"2026-05-10","read_sequence":314,"surface":"chip","place_on_part":"amplifier","text":"9630","from_factory":"unknown","scheme":"","supersedes":null,"note":""}');
INSERT INTO history VALUES(175,2,'survey',X'01a216c615667613b44892905ff124d3',NULL,'{"id":"01a216c615667613b44892905ff124d3","part":"01a216c61565721a98c06b153ffd047e","looked_on":"2024-12-26","looked_sequence":7,"who":"Ines Marlow","why":"On arrival","supersedes":null,"note":"","answers":"[{\"question\":\"running\",\"given\":{\"is\":\"seen\"}},{\"question\":\"clock-supply\",\"given\":{\"is\":\"rechargeable\"},\"place_on_part\":\"beside the keyboard port\"},{\"question\":\"coin-cell\",\"given\":{\"is\":\"good\"}},{\"question\":\"leak-reach\",\"given\":{\"is\":\"none\"}},{\"question\":\"electrolytics\",\"given\":{\"is\":\"sound\"}},{\"question\":\"tantalums\",\"given\":{\"is\":\"none\"}},{\"question\":\"rails\",\"given\":{\"is\":\"clear\"}},{\"question\":\"power-plug\",\"given\":{\"is\":\"two-plug\"}},{\"question\":\"voltage-jumpers\",\"given\":{\"is\":\"right\"}},{\"question\":\"jumpers\",\"given\":{\"is\":\"known\"}},{\"question\":\"board-faces\",\"given\":{\"is\":\"sound\"}},{\"question\":\"joints\",\"given\":{\"is\":\"sound\"}},{\"question\":\"parts-present\",\"given\":{\"is\":\"all\"}},{\"question\":\"sockets\",\"given\":{\"is\":\"sound\"}},{\"question\":\"socketed-chips\",\"given\":{\"is\":\"home\"}},{\"question\":\"headers\",\"given\":{\"is\":\"sound\"}},{\"question\":\"shells\",\"given\":{\"is\":\"bright\"}},{\"question\":\"keyboard-port\",\"given\":{\"is\":\"whole\"}},{\"question\":\"firmware\",\"given\":{\"is\":\"saved\"}},{\"question\":\"dirt\",\"given\":{\"is\":\"clean\"}},{\"question\":\"board-posts\",\"given\":{\"is\":\"there\"}}]"}');
INSERT INTO history VALUES(176,2,'survey',X'01a216c615667613b4489296ad3e3381',NULL,'{"id":"01a216c615667613b4489296ad3e3381","part":"01a216c61565721a98c06b153ffd047e","looked_on":"2026-09-27","looked_sequence":12,"who":"Ines Marlow","why":"Before fitting","supersedes":null,"note":"","answers":"[{\"question\":\"running\",\"given\":{\"is\":\"seen\"}},{\"question\":\"clock-supply\",\"given\":{\"is\":\"removed\"}},{\"question\":\"coin-cell\",\"given\":{\"is\":\"good\"}},{\"question\":\"leak-reach\",\"given\":{\"is\":\"none\"}},{\"question\":\"electrolytics\",\"given\":{\"is\":\"sound\"}},{\"question\":\"tantalums\",\"given\":{\"is\":\"none\"}},{\"question\":\"rails\",\"given\":{\"is\":\"clear\"}},{\"question\":\"power-plug\",\"given\":{\"is\":\"two-plug\"}},{\"question\":\"voltage-jumpers\",\"given\":{\"is\":\"right\"}},{\"question\":\"jumpers\",\"given\":{\"is\":\"known\"}},{\"question\":\"board-faces\",\"given\":{\"is\":\"sound\"}},{\"question\":\"joints\",\"given\":{\"is\":\"sound\"}},{\"question\":\"parts-present\",\"given\":{\"is\":\"all\"}},{\"question\":\"sockets\",\"given\":{\"is\":\"sound\"}},{\"question\":\"socketed-chips\",\"given\":{\"is\":\"home\"}},{\"question\":\"headers\",\"given\":{\"is\":\"sound\"}},{\"question\":\"shells\",\"given\":{\"is\":\"bright\"}},{\"question\":\"keyboard-port\",\"given\":{\"is\":\"whole\"}},{\"question\":\"firmware\",\"given\":{\"is\":\"saved\"}},{\"question\":\"dirt\",\"given\":{\"is\":\"clean\"}},{\"question\":\"board-posts\",\"given\":{\"is\":\"there\"}}]"}');
INSERT INTO history VALUES(177,2,'survey',X'01a216c6164573e79d2472887feae469',NULL,'{"id":"01a216c6164573e79d2472887feae469","part":"01a216c61565721a98c06b36e1a5a538","looked_on":"2024-11-16","looked_sequence":134,"who":"Ines Marlow","why":"On arrival","supersedes":null,"note":"","answers":"[{\"question\":\"running\",\"given\":{\"is\":\"untested\"}},{\"question\":\"clock-supply\",\"given\":{\"is\":\"leaking\"},\"place_on_part\":\"beside the keyboard port\"},{\"question\":\"coin-cell\",\"given\":{\"is\":\"good\"}},{\"question\":\"leak-reach\",\"given\":{\"is\":\"far\"},\"place_on_part\":\"keyboard port and first slot\"},{\"question\":\"electrolytics\",\"given\":{\"is\":\"sound\"}},{\"question\":\"tantalums\",\"given\":{\"is\":\"none\"}},{\"question\":\"rails\",\"given\":{\"is\":\"clear\"}},{\"question\":\"power-plug\",\"given\":{\"is\":\"two-plug\"}},{\"question\":\"voltage-jumpers\",\"given\":{\"is\":\"automatic\"}},{\"question\":\"jumpers\",\"given\":{\"is\":\"known\"}},{\"question\":\"board-faces\",\"given\":{\"is\":\"sound\"}},{\"question\":\"joints\",\"given\":{\"is\":\"sound\"}},{\"question\":\"parts-present\",\"given\":{\"is\":\"all\"}},{\"question\":\"sockets\",\"given\":{\"is\":\"sound\"}},{\"question\":\"socketed-chips\",\"given\":{\"is\":\"home\"}},{\"question\":\"headers\",\"given\":{\"is\":\"sound\"}},{\"question\":\"shells\",\"given\":{\"is\":\"bright\"}},{\"question\":\"keyboard-port\",\"given\":{\"is\":\"whole\"}},{\"question\":\"firmware\",\"given\":{\"is\":\"saved\"}},{\"question\":\"dirt\",\"given\":{\"is\":\"clean\"}},{\"question\":\"board-posts\",\"given\":{\"is\":\"there\"}}]"}');
INSERT INTO history VALUES(178,2,'survey',X'01a216c616467336bd5ca9248a79620c',NULL,'{"id":"01a216c616467336bd5ca9248a79620c","part":"01a216c61565721a98c06b36e1a5a538","looked_on":"2026-01-30","looked_sequence":141,"who":"Ines Marlow","why":"Second look after cleaning","supersedes":null,"note":"","answers":"[{\"question\":\"running\",\"given\":{\"is\":\"untested\"}},{\"question\":\"clock-supply\",\"given\":{\"is\":\"removed\"}},{\"question\":\"coin-cell\",\"given\":{\"is\":\"good\"}},{\"question\":\"leak-reach\",\"given\":{\"is\":\"tracks-gone\"},\"place_on_part\":\"between keyboard port and its controller\"},{\"question\":\"electrolytics\",\"given\":{\"is\":\"sound\"}},{\"question\":\"tantalums\",\"given\":{\"is\":\"none\"}},{\"question\":\"rails\",\"given\":{\"is\":\"clear\"}},{\"question\":\"power-plug\",\"given\":{\"is\":\"two-plug\"}},{\"question\":\"voltage-jumpers\",\"given\":{\"is\":\"right\"}},{\"question\":\"jumpers\",\"given\":{\"is\":\"known\"}},{\"question\":\"board-faces\",\"given\":{\"is\":\"sound\"}},{\"question\":\"joints\",\"given\":{\"is\":\"sound\"}},{\"question\":\"parts-present\",\"given\":{\"is\":\"all\"}},{\"question\":\"sockets\",\"given\":{\"is\":\"sound\"}},{\"question\":\"socketed-chips\",\"given\":{\"is\":\"home\"}},{\"question\":\"headers\",\"given\":{\"is\":\"sound\"}},{\"question\":\"shells\",\"given\":{\"is\":\"bright\"}},{\"question\":\"keyboard-port\",\"given\":{\"is\":\"whole\"}},{\"question\":\"firmware\",\"given\":{\"is\":\"saved\"}},{\"question\":\"dirt\",\"given\":{\"is\":\"clean\"}},{\"question\":\"board-posts\",\"given\":{\"is\":\"there\"}}]"}');
INSERT INTO history VALUES(179,2,'survey',X'01a216c6165172e7afd95f63970f0936',NULL,'{"id":"01a216c6165172e7afd95f63970f0936","part":"01a216c61565721a98c06b37ad760c92","looked_on":"2025-06-04","looked_sequence":147,"who":"Ines Marlow","why":"On arrival","supersedes":null,"note":"","answers":"[{\"question\":\"running\",\"given\":{\"is\":\"untested\"}},{\"question\":\"clock-supply\",\"given\":{\"is\":\"removed\"}},{\"question\":\"coin-cell\",\"given\":{\"is\":\"good\"}},{\"question\":\"leak-reach\",\"given\":{\"is\":\"none\"}},{\"question\":\"electrolytics\",\"given\":{\"is\":\"sound\"}},{\"question\":\"tantalums\",\"given\":{\"is\":\"none\"}},{\"question\":\"rails\",\"given\":{\"is\":\"clear\"}},{\"question\":\"power-plug\",\"given\":{\"is\":\"two-plug\"}},{\"question\":\"voltage-jumpers\",\"given\":{\"is\":\"automatic\"}},{\"question\":\"jumpers\",\"given\":{\"is\":\"known\"}},{\"question\":\"board-faces\",\"given\":{\"is\":\"sound\"}},{\"question\":\"joints\",\"given\":{\"is\":\"sound\"}},{\"question\":\"parts-present\",\"given\":{\"is\":\"all\"}},{\"question\":\"sockets\",\"given\":{\"is\":\"sound\"}},{\"question\":\"socketed-chips\",\"given\":{\"is\":\"home\"}},{\"question\":\"headers\",\"given\":{\"is\":\"sound\"}},{\"question\":\"shells\",\"given\":{\"is\":\"rusty\"},\"figure\":4.0},{\"question\":\"keyboard-port\",\"given\":{\"is\":\"whole\"}},{\"question\":\"firmware\",\"given\":{\"is\":\"saved\"}},{\"question\":\"dirt\",\"given\":{\"is\":\"clean\"}},{\"question\":\"board-posts\",\"given\":{\"is\":\"there\"}}]"}');
INSERT INTO history VALUES(180,2,'survey',X'01a216c616fd76498a564db85b84baf5',NULL,'{"id":"01a216c616fd76498a564db85b84baf5","part":"01a216c61565721a98c06b5b91a71d8e","looked_on":"2025-12-31","looked_sequence":239,"who":"Ines Marlow","why":"On arrival","supersedes":null,"note":"","answers":"[{\"question\":\"running\",\"given\":{\"is\":\"faulty\"}},{\"question\":\"clock-supply\",\"given\":{\"is\":\"coin\"}},{\"question\":\"coin-cell\",\"given\":{\"is\":\"good\"},\"figure\":3.0},{\"question\":\"leak-reach\",\"given\":{\"is\":\"none\"}},{\"question\":\"electrolytics\",\"given\":{\"is\":\"sound\"}},{\"question\":\"tantalums\",\"given\":{\"is\":\"none\"}},{\"question\":\"rails\",\"given\":{\"is\":\"clear\"}},{\"question\":\"power-plug\",\"given\":{\"is\":\"atx\"}},{\"question\":\"voltage-jumpers\",\"given\":{\"is\":\"automatic\"}},{\"question\":\"jumpers\",\"given\":{\"is\":\"known\"}},{\"question\":\"board-faces\",\"given\":{\"is\":\"sound\"}},{\"question\":\"joints\",\"given\":{\"is\":\"sound\"}},{\"question\":\"parts-present\",\"given\":{\"is\":\"all\"}},{\"question\":\"sockets\",\"given\":{\"is\":\"sound\"}},{\"question\":\"socketed-chips\",\"given\":{\"is\":\"home\"}},{\"question\":\"headers\",\"given\":{\"is\":\"sound\"}},{\"question\":\"shells\",\"given\":{\"is\":\"bright\"}},{\"question\":\"keyboard-port\",\"given\":{\"is\":\"whole\"}},{\"question\":\"firmware\",\"given\":{\"is\":\"saved\"}},{\"question\":\"dirt\",\"given\":{\"is\":\"clean\"}},{\"question\":\"board-posts\",\"given\":{\"is\":\"there\"}}]"}');
INSERT INTO history VALUES(181,2,'survey',X'01a216c61755733b99484fa205b9d3e3',NULL,'{"id":"01a216c61755733b99484fa205b9d3e3","part":"01a216c61565721a98c06b6ea61d6586","looked_on":"2026-05-10","looked_sequence":316,"who":"Ines Marlow","why":"On arrival","supersedes":null,"note":"","answers":"[{\"question\":\"running\",\"given\":{\"is\":\"faulty\"}},{\"question\":\"clock-supply\",\"given\":{\"is\":\"nothing\"}},{\"question\":\"leak-reach\",\"given\":{\"is\":\"none\"}},{\"question\":\"electrolytics\",\"given\":{\"is\":\"leaking\"}},{\"question\":\"tantalums\",\"given\":{\"is\":\"none\"}},{\"question\":\"rails\",\"given\":{\"is\":\"clear\"}},{\"question\":\"jumpers\",\"given\":{\"is\":\"known\"}},{\"question\":\"board-faces\",\"given\":{\"is\":\"sound\"}},{\"question\":\"joints\",\"given\":{\"is\":\"sound\"}},{\"question\":\"parts-present\",\"given\":{\"is\":\"all\"}},{\"question\":\"socketed-chips\",\"given\":{\"is\":\"home\"}},{\"question\":\"headers\",\"given\":{\"is\":\"sound\"}},{\"question\":\"shells\",\"given\":{\"is\":\"bright\"}},{\"question\":\"dirt\",\"given\":{\"is\":\"clean\"}},{\"question\":\"edge-contacts\",\"given\":{\"is\":\"bright\"}},{\"question\":\"bracket\",\"given\":{\"is\":\"right\"}},{\"question\":\"slot-key\",\"given\":{\"is\":\"plain\"}},{\"question\":\"minus-five\",\"given\":{\"is\":\"no\"}},{\"question\":\"jacks\",\"given\":{\"is\":\"firm\"}},{\"question\":\"card-leads\",\"given\":{\"is\":\"present\"}},{\"question\":\"driver\",\"given\":{\"is\":\"kept\"}}]"}');
INSERT INTO history VALUES(182,2,'finding',X'01a216c615667613b448929177a727ec',NULL,'{"id":"01a216c615667613b448929177a727ec","part":"01a216c61565721a98c06b153ffd047e","what":"cell-present","place_on_part":"beside the keyboard port","source":"survey","question":"clock-supply","note":""}');
INSERT INTO history VALUES(183,2,'finding',X'01a216c615667613b44892973a881a14',NULL,'{"id":"01a216c615667613b44892973a881a14","part":"01a216c61565721a98c06b153ffd047e","what":"clock-unfed","place_on_part":"","source":"survey","question":"clock-supply","note":""}');
INSERT INTO history VALUES(184,2,'finding',X'01a216c6164573e79d247289163043d1',NULL,'{"id":"01a216c6164573e79d247289163043d1","part":"01a216c61565721a98c06b36e1a5a538","what":"cell-leaked","place_on_part":"beside the keyboard port","source":"survey","question":"clock-supply","note":""}');
INSERT INTO history VALUES(185,2,'finding',X'01a216c6164573e79d24728b9f7a391e',NULL,'{"id":"01a216c6164573e79d24728b9f7a391e","part":"01a216c61565721a98c06b36e1a5a538","what":"leak-residue","place_on_part":"keyboard port and first slot","source":"survey","question":"leak-reach","note":""}');
INSERT INTO history VALUES(186,2,'finding',X'01a216c616467336bd5ca9259474a6ff',NULL,'{"id":"01a216c616467336bd5ca9259474a6ff","part":"01a216c61565721a98c06b36e1a5a538","what":"clock-unfed","place_on_part":"","source":"survey","question":"clock-supply","note":""}');
INSERT INTO history VALUES(187,2,'finding',X'01a216c616467336bd5ca927e55b71ce',NULL,'{"id":"01a216c616467336bd5ca927e55b71ce","part":"01a216c61565721a98c06b36e1a5a538","what":"tracks-eaten","place_on_part":"between keyboard port and its controller","source":"survey","question":"leak-reach","note":""}');
INSERT INTO history VALUES(188,2,'finding',X'01a216c6165172e7afd95f644eea3328',NULL,'{"id":"01a216c6165172e7afd95f644eea3328","part":"01a216c61565721a98c06b37ad760c92","what":"clock-unfed","place_on_part":"","source":"survey","question":"clock-supply","note":""}');
INSERT INTO history VALUES(189,2,'finding',X'01a216c6165172e7afd95f66f4db402d',NULL,'{"id":"01a216c6165172e7afd95f66f4db402d","part":"01a216c61565721a98c06b37ad760c92","what":"shells-rusted","place_on_part":"","source":"survey","question":"shells","note":""}');
INSERT INTO history VALUES(190,2,'finding',X'01a216c616fd76498a564db936a4f2b9',NULL,'{"id":"01a216c616fd76498a564db936a4f2b9","part":"01a216c61565721a98c06b5b91a71d8e","what":"works-badly","place_on_part":"","source":"survey","question":"running","note":""}');
INSERT INTO history VALUES(191,2,'finding',X'01a216c616fd76498a564dbfb3be285a',NULL,'{"id":"01a216c616fd76498a564dbfb3be285a","part":"01a216c61565721a98c06b5b91a71d8e","what":"capacitors-bulged","place_on_part":"C1, C2, C3","source":"capacitors","question":"","note":""}');
INSERT INTO history VALUES(192,2,'finding',X'01a216c61755733b99484fa3af69b9e4',NULL,'{"id":"01a216c61755733b99484fa3af69b9e4","part":"01a216c61565721a98c06b6ea61d6586","what":"works-badly","place_on_part":"","source":"survey","question":"running","note":""}');
INSERT INTO history VALUES(193,2,'finding',X'01a216c61755733b99484fa5c2c91e90',NULL,'{"id":"01a216c61755733b99484fa5c2c91e90","part":"01a216c61565721a98c06b6ea61d6586","what":"capacitors-leaking","place_on_part":"","source":"survey","question":"electrolytics","note":""}');
INSERT INTO history VALUES(194,2,'work',X'01a216c615667613b4489293207c5f00',NULL,'{"id":"01a216c615667613b4489293207c5f00","part":"01a216c61565721a98c06b153ffd047e","finding":"01a216c615667613b448929177a727ec","rule":"photograph","title":"","hold":"power","nature":"care","state":"done","changed_on":"2024-12-27","changed_sequence":9,"who":"Ines Marlow","minutes":10,"used":"","reason":"","reversible":null,"note":"","touches":"unstated"}');
INSERT INTO history VALUES(195,2,'work',X'01a216c615667613b4489294349610c7',NULL,'{"id":"01a216c615667613b4489294349610c7","part":"01a216c61565721a98c06b153ffd047e","finding":"01a216c615667613b448929177a727ec","rule":"cut-cell","title":"","hold":"storage","nature":"repair","state":"done","changed_on":"2024-12-27","changed_sequence":10,"who":"Ines Marlow","minutes":8,"used":"","reason":"","reversible":null,"note":"Cell bagged, polarity marked on the bag.","touches":"unstated"}');
INSERT INTO history VALUES(196,2,'work',X'01a216c6164573e79d24728d64d0f83f',NULL,'{"id":"01a216c6164573e79d24728d64d0f83f","part":"01a216c61565721a98c06b36e1a5a538","finding":"01a216c6164573e79d247289163043d1","rule":"photograph","title":"","hold":"power","nature":"care","state":"done","changed_on":"2024-11-18","changed_sequence":137,"who":"Ines Marlow","minutes":12,"used":"","reason":"","reversible":null,"note":"","touches":"unstated"}');
INSERT INTO history VALUES(197,2,'work',X'01a216c616467336bd5ca9219b3f5782',NULL,'{"id":"01a216c616467336bd5ca9219b3f5782","part":"01a216c61565721a98c06b36e1a5a538","finding":"01a216c6164573e79d247289163043d1","rule":"cut-leaking-cell","title":"","hold":"storage","nature":"repair","state":"done","changed_on":"2024-11-18","changed_sequence":138,"who":"Ines Marlow","minutes":6,"used":"","reason":"","reversible":null,"note":"","touches":"unstated"}');
INSERT INTO history VALUES(198,2,'work',X'01a216c616467336bd5ca922dd18f378',NULL,'{"id":"01a216c616467336bd5ca922dd18f378","part":"01a216c61565721a98c06b36e1a5a538","finding":"01a216c6164573e79d247289163043d1","rule":"neutralise","title":"","hold":"storage","nature":"care","state":"done","changed_on":"2024-11-19","changed_sequence":139,"who":"Ines Marlow","minutes":35,"used":"White vinegar, swabs","reason":"","reversible":null,"note":"","touches":"unstated"}');
INSERT INTO history VALUES(199,2,'work',X'01a216c616467336bd5ca923fbfa59b0',NULL,'{"id":"01a216c616467336bd5ca923fbfa59b0","part":"01a216c61565721a98c06b36e1a5a538","finding":"01a216c6164573e79d247289163043d1","rule":"rinse-and-dry","title":"","hold":"storage","nature":"care","state":"done","changed_on":"2024-11-20","changed_sequence":140,"who":"Ines Marlow","minutes":15,"used":"Deionised water, alcohol","reason":"","reversible":null,"note":"","touches":"unstated"}');
INSERT INTO history VALUES(200,2,'work',X'01a216c616467336bd5ca92949e80b50',NULL,'{"id":"01a216c616467336bd5ca92949e80b50","part":"01a216c61565721a98c06b36e1a5a538","finding":"01a216c616467336bd5ca927e55b71ce","rule":"mend-eaten-tracks","title":"","hold":"power","nature":"repair","state":"doing","changed_on":"2026-11-06","changed_sequence":144,"who":"Teodor Lask","minutes":90,"used":"Bridging wire","reason":"","reversible":null,"note":"Five of seven tracks bridged.","touches":"unstated"}');
INSERT INTO history VALUES(201,2,'work',X'01a216c6165172e7afd95f68682380a5',NULL,'{"id":"01a216c6165172e7afd95f68682380a5","part":"01a216c61565721a98c06b37ad760c92","finding":null,"rule":"","title":"Start it on the bench and compare with 0034","hold":"ready","nature":"care","state":"open","changed_on":"2026-10-27","changed_sequence":150,"who":"Ines Marlow","minutes":null,"used":"","reason":"","reversible":null,"note":"","touches":"unstated"}');
INSERT INTO history VALUES(202,2,'work',X'01a216c616c974028db1519b192cad68',NULL,'{"id":"01a216c616c974028db1519b192cad68","part":"01a216c61565721a98c06b4f131d95da","finding":null,"rule":"","title":"Find posts and heavy-cooler support for the slot","hold":"fitting","nature":"repair","state":"waiting","changed_on":"2026-07-19","changed_sequence":209,"who":"Ines Marlow","minutes":null,"used":"","reason":"","reversible":null,"note":"Asked at two swap meets.","touches":"unstated"}');
INSERT INTO history VALUES(203,2,'work',X'01a216c616fe7769954590acb7fca519',NULL,'{"id":"01a216c616fe7769954590acb7fca519","part":"01a216c61565721a98c06b5b91a71d8e","finding":"01a216c616fd76498a564dbfb3be285a","rule":"photograph","title":"","hold":"power","nature":"care","state":"done","changed_on":"2026-09-29","changed_sequence":254,"who":"Ines Marlow","minutes":10,"used":"","reason":"","reversible":null,"note":"","touches":"unstated"}');
INSERT INTO history VALUES(204,2,'work',X'01a216c616fe7769954590ad41950eb4',NULL,'{"id":"01a216c616fe7769954590ad41950eb4","part":"01a216c61565721a98c06b5b91a71d8e","finding":"01a216c616fd76498a564dbfb3be285a","rule":"recap","title":"","hold":"power","nature":"rework","state":"doing","changed_on":"2026-11-14","changed_sequence":255,"who":"Ines Marlow","minutes":80,"used":"3 × 1000 µF 6.3 V, low ESR, 8 mm","reason":"","reversible":null,"note":"C1 to C3 done. C4 to C6 wait for better light.","touches":"unstated"}');
INSERT INTO history VALUES(205,2,'work_after',X'01a216c617c076dfa7ed989db4e12130',NULL,'{"id":"01a216c617c076dfa7ed989db4e12130","part":"01a216c61565721a98c06b37ad760c92","work":"01a216c6165172e7afd95f68682380a5","after":"01a216c616467336bd5ca92949e80b50"}');
INSERT INTO history VALUES(206,2,'look',X'01a216c615667613b4489292273b36db',NULL,'{"id":"01a216c615667613b4489292273b36db","finding":"01a216c615667613b448929177a727ec","looked_on":"2024-12-26","looked_sequence":8,"state":"open","severity":"plain","share_percent":null,"again_by":"","reason":"","survey":"01a216c615667613b44892905ff124d3","work":null,"who":""}');
INSERT INTO history VALUES(207,2,'look',X'01a216c615667613b44892959fa05d98',NULL,'{"id":"01a216c615667613b44892959fa05d98","finding":"01a216c615667613b448929177a727ec","looked_on":"2024-12-27","looked_sequence":11,"state":"cured","severity":"plain","share_percent":null,"again_by":"","reason":"","survey":null,"work":"01a216c615667613b4489294349610c7","who":""}');
INSERT INTO history VALUES(208,2,'look',X'01a216c615667613b4489298120454de',NULL,'{"id":"01a216c615667613b4489298120454de","finding":"01a216c615667613b44892973a881a14","looked_on":"2026-09-27","looked_sequence":13,"state":"open","severity":"slight","share_percent":null,"again_by":"","reason":"","survey":"01a216c615667613b4489296ad3e3381","work":null,"who":""}');
INSERT INTO history VALUES(209,2,'look',X'01a216c6164573e79d24728a345e7c94',NULL,'{"id":"01a216c6164573e79d24728a345e7c94","finding":"01a216c6164573e79d247289163043d1","looked_on":"2024-11-16","looked_sequence":135,"state":"open","severity":"grave","share_percent":null,"again_by":"","reason":"","survey":"01a216c6164573e79d2472887feae469","work":null,"who":""}');
INSERT INTO history VALUES(210,2,'look',X'01a216c6164573e79d24728c0275bc3c',NULL,'{"id":"01a216c6164573e79d24728c0275bc3c","finding":"01a216c6164573e79d24728b9f7a391e","looked_on":"2024-11-16","looked_sequence":136,"state":"open","severity":"grave","share_percent":null,"again_by":"","reason":"","survey":"01a216c6164573e79d2472887feae469","work":null,"who":""}');
INSERT INTO history VALUES(211,2,'look',X'01a216c616467336bd5ca926c620b016',NULL,'{"id":"01a216c616467336bd5ca926c620b016","finding":"01a216c616467336bd5ca9259474a6ff","looked_on":"2026-01-30","looked_sequence":142,"state":"open","severity":"slight","share_percent":null,"again_by":"","reason":"","survey":"01a216c616467336bd5ca9248a79620c","work":null,"who":""}');
INSERT INTO history VALUES(212,2,'look',X'01a216c616467336bd5ca92844cf6ff2',NULL,'{"id":"01a216c616467336bd5ca92844cf6ff2","finding":"01a216c616467336bd5ca927e55b71ce","looked_on":"2026-01-30","looked_sequence":143,"state":"open","severity":"grave","share_percent":null,"again_by":"","reason":"","survey":"01a216c616467336bd5ca9248a79620c","work":null,"who":""}');
INSERT INTO history VALUES(213,2,'look',X'01a216c6165172e7afd95f655338e5f5',NULL,'{"id":"01a216c6165172e7afd95f655338e5f5","finding":"01a216c6165172e7afd95f644eea3328","looked_on":"2025-06-04","looked_sequence":148,"state":"open","severity":"slight","share_percent":null,"again_by":"","reason":"","survey":"01a216c6165172e7afd95f63970f0936","work":null,"who":""}');
INSERT INTO history VALUES(214,2,'look',X'01a216c6165172e7afd95f675bf1961f',NULL,'{"id":"01a216c6165172e7afd95f675bf1961f","finding":"01a216c6165172e7afd95f66f4db402d","looked_on":"2025-06-04","looked_sequence":149,"state":"open","severity":"slight","share_percent":4.0,"again_by":"","reason":"","survey":"01a216c6165172e7afd95f63970f0936","work":null,"who":""}');
INSERT INTO history VALUES(215,2,'look',X'01a216c616fd76498a564dbaa5a8f239',NULL,'{"id":"01a216c616fd76498a564dbaa5a8f239","finding":"01a216c616fd76498a564db936a4f2b9","looked_on":"2025-12-31","looked_sequence":240,"state":"open","severity":"plain","share_percent":null,"again_by":"","reason":"","survey":"01a216c616fd76498a564db85b84baf5","work":null,"who":""}');
INSERT INTO history VALUES(216,2,'look',X'01a216c616fd76498a564dc023ae2ac2',NULL,'{"id":"01a216c616fd76498a564dc023ae2ac2","finding":"01a216c616fd76498a564dbfb3be285a","looked_on":"2026-09-29","looked_sequence":245,"state":"open","severity":"plain","share_percent":null,"again_by":"","reason":"","survey":null,"work":null,"who":""}');
INSERT INTO history VALUES(217,2,'look',X'01a216c61755733b99484fa4da3fa15b',NULL,'{"id":"01a216c61755733b99484fa4da3fa15b","finding":"01a216c61755733b99484fa3af69b9e4","looked_on":"2026-05-10","looked_sequence":317,"state":"open","severity":"plain","share_percent":null,"again_by":"","reason":"","survey":"01a216c61755733b99484fa205b9d3e3","work":null,"who":""}');
INSERT INTO history VALUES(218,2,'look',X'01a216c61755733b99484fa62805fd46',NULL,'{"id":"01a216c61755733b99484fa62805fd46","finding":"01a216c61755733b99484fa5c2c91e90","looked_on":"2026-05-10","looked_sequence":318,"state":"open","severity":"plain","share_percent":null,"again_by":"","reason":"","survey":"01a216c61755733b99484fa205b9d3e3","work":null,"who":""}');
INSERT INTO history VALUES(219,2,'capacitor',X'01a216c616fd76498a564dbc29eda0e3',NULL,'{"id":"01a216c616fd76498a564dbc29eda0e3","part":"01a216c61565721a98c06b5b91a71d8e","designator":"C1","place_on_part":"left of the processor","capacitance_uf":1000.0,"voltage_v":6.3,"temperature_c":105.0,"diameter_mm":8.0,"height_mm":16.0,"pitch_mm":null,"dielectric":"wet_aluminium","mounting":"radial","series":"ZQ","polarity":"stripe towards the socket","logged_on":"2026-09-29","logged_sequence":242,"state":"bulged","function":"processor_supply","low_esr":null}');
INSERT INTO history VALUES(220,2,'capacitor',X'01a216c616fd76498a564dbd2a9df6c8',NULL,'{"id":"01a216c616fd76498a564dbd2a9df6c8","part":"01a216c61565721a98c06b5b91a71d8e","designator":"C2","place_on_part":"left of the processor","capacitance_uf":1000.0,"voltage_v":6.3,"temperature_c":105.0,"diameter_mm":8.0,"height_mm":16.0,"pitch_mm":null,"dielectric":"wet_aluminium","mounting":"radial","series":"ZQ","polarity":"stripe towards the socket","logged_on":"2026-09-29","logged_sequence":243,"state":"bulged","function":"processor_supply","low_esr":null}');
INSERT INTO history VALUES(221,2,'capacitor',X'01a216c616fd76498a564dbe1d04a8b7',NULL,'{"id":"01a216c616fd76498a564dbe1d04a8b7","part":"01a216c61565721a98c06b5b91a71d8e","designator":"C3","place_on_part":"left of the processor","capacitance_uf":1000.0,"voltage_v":6.3,"temperature_c":105.0,"diameter_mm":8.0,"height_mm":16.0,"pitch_mm":null,"dielectric":"wet_aluminium","mounting":"radial","series":"ZQ","polarity":"stripe towards the socket","logged_on":"2026-09-29","logged_sequence":244,"state":"bulged","function":"processor_supply","low_esr":null}');
INSERT INTO history VALUES(222,2,'capacitor',X'01a216c616fd76498a564dc188cb2eba',NULL,'{"id":"01a216c616fd76498a564dc188cb2eba","part":"01a216c61565721a98c06b5b91a71d8e","designator":"C4","place_on_part":"left of the processor, lower down","capacitance_uf":1000.0,"voltage_v":6.3,"temperature_c":105.0,"diameter_mm":8.0,"height_mm":16.0,"pitch_mm":null,"dielectric":"wet_aluminium","mounting":"radial","series":"ZQ","polarity":"stripe towards the socket","logged_on":"2026-09-29","logged_sequence":246,"state":"bulged","function":"processor_supply","low_esr":null}');
INSERT INTO history VALUES(223,2,'capacitor',X'01a216c616fd76498a564dc28ca53b9f',NULL,'{"id":"01a216c616fd76498a564dc28ca53b9f","part":"01a216c61565721a98c06b5b91a71d8e","designator":"C5","place_on_part":"left of the processor, lower down","capacitance_uf":1000.0,"voltage_v":6.3,"temperature_c":105.0,"diameter_mm":8.0,"height_mm":16.0,"pitch_mm":null,"dielectric":"wet_aluminium","mounting":"radial","series":"ZQ","polarity":"stripe towards the socket","logged_on":"2026-09-29","logged_sequence":247,"state":"bulged","function":"processor_supply","low_esr":null}');
INSERT INTO history VALUES(224,2,'capacitor',X'01a216c616fd76498a564dc3cfa25a67',NULL,'{"id":"01a216c616fd76498a564dc3cfa25a67","part":"01a216c61565721a98c06b5b91a71d8e","designator":"C6","place_on_part":"left of the processor, lower down","capacitance_uf":1000.0,"voltage_v":6.3,"temperature_c":105.0,"diameter_mm":8.0,"height_mm":16.0,"pitch_mm":null,"dielectric":"wet_aluminium","mounting":"radial","series":"ZQ","polarity":"stripe towards the socket","logged_on":"2026-09-29","logged_sequence":248,"state":"bulged","function":"processor_supply","low_esr":null}');
INSERT INTO history VALUES(225,2,'capacitor',X'01a216c616fd76498a564dc4819a82d6',NULL,'{"id":"01a216c616fd76498a564dc4819a82d6","part":"01a216c61565721a98c06b5b91a71d8e","designator":"C11","place_on_part":"by the memory sockets","capacitance_uf":470.0,"voltage_v":16.0,"temperature_c":105.0,"diameter_mm":8.0,"height_mm":12.0,"pitch_mm":null,"dielectric":"wet_aluminium","mounting":"radial","series":"ZQ","polarity":"","logged_on":"2026-09-29","logged_sequence":249,"state":"sound","function":null,"low_esr":null}');
INSERT INTO history VALUES(226,2,'capacitor',X'01a216c616fd76498a564dc557f90924',NULL,'{"id":"01a216c616fd76498a564dc557f90924","part":"01a216c61565721a98c06b5b91a71d8e","designator":"C12","place_on_part":"by the memory sockets","capacitance_uf":470.0,"voltage_v":16.0,"temperature_c":105.0,"diameter_mm":8.0,"height_mm":12.0,"pitch_mm":null,"dielectric":"wet_aluminium","mounting":"radial","series":"ZQ","polarity":"","logged_on":"2026-09-29","logged_sequence":250,"state":"sound","function":null,"low_esr":null}');
INSERT INTO history VALUES(227,2,'capacitor',X'01a216c616fd76498a564dc6494e1ee6',NULL,'{"id":"01a216c616fd76498a564dc6494e1ee6","part":"01a216c61565721a98c06b5b91a71d8e","designator":"C13","place_on_part":"by the memory sockets","capacitance_uf":470.0,"voltage_v":16.0,"temperature_c":105.0,"diameter_mm":8.0,"height_mm":12.0,"pitch_mm":null,"dielectric":"wet_aluminium","mounting":"radial","series":"ZQ","polarity":"","logged_on":"2026-09-29","logged_sequence":251,"state":"sound","function":null,"low_esr":null}');
INSERT INTO history VALUES(228,2,'capacitor',X'01a216c616fd76498a564dc706c3accb',NULL,'{"id":"01a216c616fd76498a564dc706c3accb","part":"01a216c61565721a98c06b5b91a71d8e","designator":"C14","place_on_part":"by the memory sockets","capacitance_uf":470.0,"voltage_v":16.0,"temperature_c":105.0,"diameter_mm":8.0,"height_mm":12.0,"pitch_mm":null,"dielectric":"wet_aluminium","mounting":"radial","series":"ZQ","polarity":"","logged_on":"2026-09-29","logged_sequence":252,"state":"sound","function":null,"low_esr":null}');
INSERT INTO history VALUES(229,2,'capacitor',X'01a216c616fd76498a564dc8132fa873',NULL,'{"id":"01a216c616fd76498a564dc8132fa873","part":"01a216c61565721a98c06b5b91a71d8e","designator":"C20","place_on_part":"under the heatsink clip","capacitance_uf":100.0,"voltage_v":16.0,"temperature_c":105.0,"diameter_mm":6.3,"height_mm":11.0,"pitch_mm":null,"dielectric":"wet_aluminium","mounting":"radial","series":"","polarity":"","logged_on":"2026-09-29","logged_sequence":253,"state":"not_looked","function":null,"low_esr":null}');
INSERT INTO history VALUES(230,2,'capacitor_look',X'01a216c616fe7769954590ae26457d36',NULL,'{"id":"01a216c616fe7769954590ae26457d36","capacitor":"01a216c616fd76498a564dbc29eda0e3","looked_on":"2026-11-14","looked_sequence":256,"state":"sound","measured_uf":985.0,"esr_mohm":22.0,"leakage_ua":null,"replaced_by":"1000 µF 6.3 V, low ESR, 8 mm","note":""}');
INSERT INTO history VALUES(231,2,'capacitor_look',X'01a216c616fe7769954590afcfe29dc4',NULL,'{"id":"01a216c616fe7769954590afcfe29dc4","capacitor":"01a216c616fd76498a564dbd2a9df6c8","looked_on":"2026-11-14","looked_sequence":257,"state":"sound","measured_uf":985.0,"esr_mohm":22.0,"leakage_ua":null,"replaced_by":"1000 µF 6.3 V, low ESR, 8 mm","note":""}');
INSERT INTO history VALUES(232,2,'capacitor_look',X'01a216c616fe7769954590b09b203dde',NULL,'{"id":"01a216c616fe7769954590b09b203dde","capacitor":"01a216c616fd76498a564dbe1d04a8b7","looked_on":"2026-11-14","looked_sequence":258,"state":"sound","measured_uf":985.0,"esr_mohm":22.0,"leakage_ua":null,"replaced_by":"1000 µF 6.3 V, low ESR, 8 mm","note":""}');
INSERT INTO history VALUES(233,2,'kit',X'01a216c617f97586ac4d6b9dcba22bd4',NULL,'{"id":"01a216c617f97586ac4d6b9dcba22bd4","name":"Second half of 0071","scope":"0071, bad ones","state":"ordered","changed_on":"2026-11-16","changed_sequence":470,"frozen":"2026-11-16","ordered":"2026-11-16","received":"","used":"","note":""}');
INSERT INTO history VALUES(234,2,'kit_line',X'01a216c617f97586ac4d6b9e921213c9',NULL,'{"id":"01a216c617f97586ac4d6b9e921213c9","kit":"01a216c617f97586ac4d6b9dcba22bd4","material":"01a216c6153375ac87d6cd100afb903b","capacitance_uf":1000.0,"voltage_v":6.3,"temperature_c":105.0,"diameter_mm":8.0,"height_mm":16.0,"pitch_mm":null,"dielectric":"wet_aluminium","mounting":"radial","low_esr":1,"from_stock":1,"to_buy":2,"spares":1,"price_cents":35,"supplier":"Hollin Parts by post","note":""}');
INSERT INTO history VALUES(235,2,'kit_position',X'01a216c617f97586ac4d6b9fbc647db8',NULL,'{"id":"01a216c617f97586ac4d6b9fbc647db8","line":"01a216c617f97586ac4d6b9e921213c9","capacitor":"01a216c616fd76498a564dc188cb2eba"}');
INSERT INTO history VALUES(236,2,'kit_position',X'01a216c617f97586ac4d6ba0df7f5d57',NULL,'{"id":"01a216c617f97586ac4d6ba0df7f5d57","line":"01a216c617f97586ac4d6b9e921213c9","capacitor":"01a216c616fd76498a564dc28ca53b9f"}');
INSERT INTO history VALUES(237,2,'kit_position',X'01a216c617f97586ac4d6ba12411824c',NULL,'{"id":"01a216c617f97586ac4d6ba12411824c","line":"01a216c617f97586ac4d6b9e921213c9","capacitor":"01a216c616fd76498a564dc3cfa25a67"}');
INSERT INTO history VALUES(238,2,'proof',X'01a216c615667613b44892995613f9e8',NULL,'{"id":"01a216c615667613b44892995613f9e8","part":"01a216c61565721a98c06b153ffd047e","machine":null,"test":"boot","run_on":"2026-10-07","run_sequence":14,"rig":"Bench: proven supply, known-good processor, memory set and video card, test card","minutes":15,"criterion":"Starts to a picture with no beep code; supply voltages right; no part hot.","result":"passed","who":"Ines Marlow","note":""}');
INSERT INTO history VALUES(239,2,'proof',X'01a216c6158572999d48f7ad06628756',NULL,'{"id":"01a216c6158572999d48f7ad06628756","part":"01a216c61565721a98c06b196494c08c","machine":null,"test":"memory-test","run_on":"2026-10-05","run_sequence":22,"rig":"Proven board, cache switched off","minutes":480,"criterion":"Full passes overnight with no error at all; one error fails it.","result":"passed","who":"Ines Marlow","note":""}');
INSERT INTO history VALUES(240,2,'proof',X'01a216c6158a76cbb3cf6c7c3271084f',NULL,'{"id":"01a216c6158a76cbb3cf6c7c3271084f","part":"01a216c61565721a98c06b1abacab539","machine":null,"test":"picture","run_on":"2026-10-07","run_sequence":26,"rig":"Proven board and screen","minutes":60,"criterion":"Text, every graphics mode of its time and 3D where it has it; no speck, no stripe; fan turns; one hour.","result":"passed","who":"Ines Marlow","note":""}');
INSERT INTO history VALUES(241,2,'proof',X'01a216c615bd70cbb9e642e86d9289c0',NULL,'{"id":"01a216c615bd70cbb9e642e86d9289c0","part":"01a216c61565721a98c06b1e807dd967","machine":null,"test":"load-test","run_on":"2026-07-29","run_sequence":47,"rig":"Dummy load, or resistors and a scrap drive; meter and oscilloscope; nothing else connected","minutes":60,"criterion":"Under load +3.3, +5, +12 V and standby within 5 %, -5 and -12 V within 10 %; ripple at most 50 mV on 3.3 V, 5 V and standby, 120 mV on +12 and -12 V, 100 mV on -5 V. One hour at half load: no smell, warm but not hot. Sitting at the very edge is no pass.","result":"passed","who":"Ines Marlow","note":""}');
INSERT INTO history VALUES(242,2,'proof',X'01a216c615d5771f90e84cdc065a794c',NULL,'{"id":"01a216c615d5771f90e84cdc065a794c","part":"01a216c61565721a98c06b21eaae18fc","machine":null,"test":"boot","run_on":"2026-08-23","run_sequence":58,"rig":"Bench: proven supply, known-good processor, memory set and video card, test card","minutes":15,"criterion":"Starts to a picture with no beep code; supply voltages right; no part hot.","result":"passed","who":"Ines Marlow","note":""}');
INSERT INTO history VALUES(243,2,'proof',X'01a216c6160176d792712b5cf189d543',NULL,'{"id":"01a216c6160176d792712b5cf189d543","part":"01a216c61565721a98c06b2bd7b34964","machine":null,"test":"boot","run_on":"2026-04-30","run_sequence":87,"rig":"Bench: proven supply, known-good processor, memory set and video card, test card","minutes":15,"criterion":"Starts to a picture with no beep code; supply voltages right; no part hot.","result":"passed","who":"Ines Marlow","note":""}');
INSERT INTO history VALUES(244,2,'proof',X'01a216c616cd7013b5d309823e557981',NULL,'{"id":"01a216c616cd7013b5d309823e557981","part":"01a216c61565721a98c06b50a358ebf0","machine":null,"test":"memory-test","run_on":"2026-10-29","run_sequence":212,"rig":"Proven board, cache switched off","minutes":480,"criterion":"Full passes overnight with no error at all; one error fails it.","result":"passed","who":"Ines Marlow","note":""}');
INSERT INTO history VALUES(245,2,'proof',X'01a216c616eb75b394cf7103008d023a',NULL,'{"id":"01a216c616eb75b394cf7103008d023a","part":"01a216c61565721a98c06b58f941d1fd","machine":null,"test":"load-test","run_on":"2026-10-28","run_sequence":231,"rig":"Dummy load, or resistors and a scrap drive; meter and oscilloscope; nothing else connected","minutes":60,"criterion":"Under load +3.3, +5, +12 V and standby within 5 %, -5 and -12 V within 10 %; ripple at most 50 mV on 3.3 V, 5 V and standby, 120 mV on +12 and -12 V, 100 mV on -5 V. One hour at half load: no smell, warm but not hot. Sitting at the very edge is no pass.","result":"passed","who":"Ines Marlow","note":""}');
INSERT INTO history VALUES(246,2,'reading',X'01a216c615bd70cbb9e642e2bdb515a6',NULL,'{"id":"01a216c615bd70cbb9e642e2bdb515a6","part":"01a216c61565721a98c06b1e807dd967","machine":null,"measured_on":"2025-04-15","measured_sequence":41,"quantity":"+5 V under load","value":5.13,"unit":"V","condition":"8 A","who":"Ines Marlow","supersedes":null,"note":"","proof":null,"work":null}');
INSERT INTO history VALUES(247,2,'reading',X'01a216c615bd70cbb9e642e3ec2f0315',NULL,'{"id":"01a216c615bd70cbb9e642e3ec2f0315","part":"01a216c61565721a98c06b1e807dd967","machine":null,"measured_on":"2025-04-15","measured_sequence":42,"quantity":"Ripple on +5 V","value":17.0,"unit":"mV","condition":"8 A","who":"Ines Marlow","supersedes":null,"note":"","proof":null,"work":null}');
INSERT INTO history VALUES(248,2,'reading',X'01a216c615bd70cbb9e642e4c71b7d0a',NULL,'{"id":"01a216c615bd70cbb9e642e4c71b7d0a","part":"01a216c61565721a98c06b1e807dd967","machine":null,"measured_on":"2025-12-21","measured_sequence":43,"quantity":"+5 V under load","value":5.11,"unit":"V","condition":"8 A","who":"Ines Marlow","supersedes":null,"note":"","proof":null,"work":null}');
INSERT INTO history VALUES(249,2,'reading',X'01a216c615bd70cbb9e642e572606234',NULL,'{"id":"01a216c615bd70cbb9e642e572606234","part":"01a216c61565721a98c06b1e807dd967","machine":null,"measured_on":"2026-07-29","measured_sequence":44,"quantity":"+5 V under load","value":5.08,"unit":"V","condition":"8 A","who":"Ines Marlow","supersedes":null,"note":"","proof":null,"work":null}');
INSERT INTO history VALUES(250,2,'reading',X'01a216c615bd70cbb9e642e6affee841',NULL,'{"id":"01a216c615bd70cbb9e642e6affee841","part":"01a216c61565721a98c06b1e807dd967","machine":null,"measured_on":"2026-07-29","measured_sequence":45,"quantity":"+12 V under load","value":11.82,"unit":"V","condition":"3 A","who":"Ines Marlow","supersedes":null,"note":"","proof":null,"work":null}');
INSERT INTO history VALUES(251,2,'reading',X'01a216c615bd70cbb9e642e77eff43ec',NULL,'{"id":"01a216c615bd70cbb9e642e77eff43ec","part":"01a216c61565721a98c06b1e807dd967","machine":null,"measured_on":"2026-07-29","measured_sequence":46,"quantity":"Ripple on +5 V","value":22.0,"unit":"mV","condition":"8 A","who":"Ines Marlow","supersedes":null,"note":"","proof":null,"work":null}');
INSERT INTO history VALUES(252,2,'reading',X'01a216c617cd741c848f9ec0be317cc4',NULL,'{"id":"01a216c617cd741c848f9ec0be317cc4","part":null,"machine":"01a216c617cd741c848f9ea8a85605b9","measured_on":"2026-10-13","measured_sequence":385,"quantity":"+5 V rail at the board","value":5.06,"unit":"V","condition":"Started, idle","who":"Ines Marlow","supersedes":null,"note":"","proof":null,"work":null}');
INSERT INTO history VALUES(253,2,'reading',X'01a216c617cd741c848f9ec19bdb55ec',NULL,'{"id":"01a216c617cd741c848f9ec19bdb55ec","part":null,"machine":"01a216c617cd741c848f9ea8a85605b9","measured_on":"2026-10-13","measured_sequence":386,"quantity":"+12 V rail at the disk","value":11.9,"unit":"V","condition":"Disk spinning","who":"Ines Marlow","supersedes":null,"note":"","proof":null,"work":null}');
INSERT INTO history VALUES(254,2,'setting',X'01a216c615667613b448928dd3116378',NULL,'{"id":"01a216c615667613b448928dd3116378","part":"01a216c61565721a98c06b153ffd047e","found_on":"2024-12-26","found_sequence":4,"name":"JP1","value":"closed","source":"print on the board"}');
INSERT INTO history VALUES(255,2,'setting',X'01a216c615667613b448928ef031bb21',NULL,'{"id":"01a216c615667613b448928ef031bb21","part":"01a216c61565721a98c06b153ffd047e","found_on":"2024-12-26","found_sequence":5,"name":"JP4","value":"2-3","source":"manual"}');
INSERT INTO history VALUES(256,2,'setting',X'01a216c615667613b448928fb1bf386c',NULL,'{"id":"01a216c615667613b448928fb1bf386c","part":"01a216c61565721a98c06b153ffd047e","found_on":"2024-12-26","found_sequence":6,"name":"Firmware version","value":"2.11","source":"start-up message"}');
INSERT INTO history VALUES(257,2,'setting',X'01a216c615d5771f90e84cd9c59fd81b',NULL,'{"id":"01a216c615d5771f90e84cd9c59fd81b","part":"01a216c61565721a98c06b21eaae18fc","found_on":"2025-07-14","found_sequence":55,"name":"JP11-JP14","value":"33 MHz","source":"manual"}');
INSERT INTO history VALUES(258,2,'setting',X'01a216c615d5771f90e84cdac5c146ee',NULL,'{"id":"01a216c615d5771f90e84cdac5c146ee","part":"01a216c61565721a98c06b21eaae18fc","found_on":"2025-07-14","found_sequence":56,"name":"JP20","value":"5 V","source":"manual"}');
INSERT INTO history VALUES(259,2,'setting',X'01a216c6160176d792712b5908610df1',NULL,'{"id":"01a216c6160176d792712b5908610df1","part":"01a216c61565721a98c06b2bd7b34964","found_on":"2025-12-31","found_sequence":84,"name":"JP3","value":"33 MHz","source":"manual"}');
INSERT INTO history VALUES(260,2,'setting',X'01a216c6160176d792712b5a69d70f4e',NULL,'{"id":"01a216c6160176d792712b5a69d70f4e","part":"01a216c61565721a98c06b2bd7b34964","found_on":"2025-12-31","found_sequence":85,"name":"JP8","value":"1-2, 5 V","source":"manual"}');
INSERT INTO history VALUES(261,2,'setting',X'01a216c6169973aeb546fb90134ebe97',NULL,'{"id":"01a216c6169973aeb546fb90134ebe97","part":"01a216c61565721a98c06b460edb198b","found_on":"2026-10-22","found_sequence":190,"name":"Address","value":"220","source":"manual"}');
INSERT INTO history VALUES(262,2,'setting',X'01a216c6169973aeb546fb9133db3b68',NULL,'{"id":"01a216c6169973aeb546fb9133db3b68","part":"01a216c61565721a98c06b460edb198b","found_on":"2026-10-22","found_sequence":191,"name":"Interrupt","value":"5","source":"manual"}');
INSERT INTO history VALUES(263,2,'setting',X'01a216c616fd76498a564db7edcd0a35',NULL,'{"id":"01a216c616fd76498a564db7edcd0a35","part":"01a216c61565721a98c06b5b91a71d8e","found_on":"2025-12-31","found_sequence":238,"name":"Bus clock","value":"133 MHz","source":"setup"}');
INSERT INTO history VALUES(264,2,'setting',X'01a216c61755733b99484fa1641df926',NULL,'{"id":"01a216c61755733b99484fa1641df926","part":"01a216c61565721a98c06b6ea61d6586","found_on":"2026-05-10","found_sequence":315,"name":"Address","value":"220","source":"print on the board"}');
INSERT INTO history VALUES(265,2,'fault_case',X'01a216c617bd7045804ce442ab2a5db2',NULL,'{"id":"01a216c617bd7045804ce442ab2a5db2","part":"01a216c61565721a98c06b6ea61d6586","machine":null,"opened_on":"2026-05-30","opened_sequence":369,"symptom":"Left channel silent, hum on the right","state":"open","outcome":""}');
INSERT INTO history VALUES(266,2,'fault_case',X'01a216c617f070cc8c93ec5d4faffc96',NULL,'{"id":"01a216c617f070cc8c93ec5d4faffc96","part":null,"machine":"01a216c617f070cc8c93ec48860cbb5d","opened_on":"2026-09-27","opened_sequence":464,"symptom":"Hangs after a quarter of an hour, sooner when warm","state":"found","outcome":"Six capacitors round the processor are domed."}');
INSERT INTO history VALUES(267,2,'trial',X'01a216c617bd7045804ce4438579a0a9',NULL,'{"id":"01a216c617bd7045804ce4438579a0a9","case":"01a216c617bd7045804ce442ab2a5db2","tried_on":"2026-05-30","tried_sequence":370,"configuration":"Bench board 0023, supply 0031","step":"Swapped the card for 0050","suspect":"01a216c61565721a98c06b6ea61d6586","known_good":"01a216c61565721a98c06b460edb198b","result":"symptom_gone","note":"","codes":""}');
INSERT INTO history VALUES(268,2,'trial',X'01a216c617bd7045804ce444392eadc3',NULL,'{"id":"01a216c617bd7045804ce444392eadc3","case":"01a216c617bd7045804ce442ab2a5db2","tried_on":"2026-06-01","tried_sequence":371,"configuration":"The same","step":"Pressed on the coupling capacitors","suspect":null,"known_good":null,"result":"symptom_changed","note":"","codes":""}');
INSERT INTO history VALUES(269,2,'trial',X'01a216c617f070cc8c93ec5e08d51ea5',NULL,'{"id":"01a216c617f070cc8c93ec5e08d51ea5","case":"01a216c617f070cc8c93ec5d4faffc96","tried_on":"2026-09-27","tried_sequence":465,"configuration":"Board, processor, one memory module, video; known-good supply","step":"Swapped the memory for the known-good module","suspect":"01a216c61565721a98c06b5e8efdf77f","known_good":"01a216c61565721a98c06b50a358ebf0","result":"symptom_stays","note":"","codes":""}');
INSERT INTO history VALUES(270,2,'trial',X'01a216c617f070cc8c93ec5f7fc53830',NULL,'{"id":"01a216c617f070cc8c93ec5f7fc53830","case":"01a216c617f070cc8c93ec5d4faffc96","tried_on":"2026-09-27","tried_sequence":466,"configuration":"The same, with the known-good module","step":"Swapped the supply","suspect":"01a216c61565721a98c06b62c4ad9e9c","known_good":"01a216c61565721a98c06b58f941d1fd","result":"symptom_stays","note":"","codes":""}');
INSERT INTO history VALUES(271,2,'trial',X'01a216c617f070cc8c93ec6023be2ae0',NULL,'{"id":"01a216c617f070cc8c93ec6023be2ae0","case":"01a216c617f070cc8c93ec5d4faffc96","tried_on":"2026-09-29","tried_sequence":467,"configuration":"The same, heatsink off, board under the lamp","step":"Looked along the tops of the capacitors","suspect":null,"known_good":null,"result":"undecided","note":"","codes":""}');
INSERT INTO history VALUES(272,2,'custody_event',X'01a216c6179573999180e8ef2c8861ad',NULL,'{"id":"01a216c6179573999180e8ef2c8861ad","part":"01a216c615667613b44892808f06a4da","happened_on":"2026-08-08","happened_sequence":353,"act":"borrowed","party":"Museum at Tolver Mill","until":"2027-09-22","price_cents":null,"condition":"Clean, a scratch on the left side.","note":""}');
INSERT INTO history VALUES(273,2,'custody_event',X'01a216c6179970278e23b3a322a6efcc',NULL,'{"id":"01a216c6179970278e23b3a322a6efcc","part":"01a216c615667613b44892814466601f","happened_on":"2026-09-17","happened_sequence":358,"act":"lent","party":"Mira Oyelaran","until":"2026-11-16","price_cents":null,"condition":"Good; cable and foot with it.","note":""}');
INSERT INTO history VALUES(274,2,'custody_event',X'01a216c617b9704f924c2ac7b7d00bbe',NULL,'{"id":"01a216c617b9704f924c2ac7b7d00bbe","part":"01a216c615667613b44892890bdcc2e3","happened_on":"2026-03-21","happened_sequence":368,"act":"sold","party":"T. Brannick","until":"","price_cents":2500,"condition":"Tested under load, label on it.","note":""}');
INSERT INTO history VALUES(275,2,'valuation',X'01a216c615d5771f90e84cddb3dbc025',NULL,'{"id":"01a216c615d5771f90e84cddb3dbc025","part":"01a216c61565721a98c06b21eaae18fc","on":"2026-09-27","amount_cents":9000,"basis":"Two sales of the same design this year"}');
INSERT INTO history VALUES(276,2,'valuation',X'01a216c61755733b99484fa7c13ed67a',NULL,'{"id":"01a216c61755733b99484fa7c13ed67a","part":"01a216c61565721a98c06b6ea61d6586","on":"2026-05-20","amount_cents":6000,"basis":"Insurer''s list"}');
INSERT INTO history VALUES(277,2,'valuation',X'01a216c61755733b99484fa83613aebe',NULL,'{"id":"01a216c61755733b99484fa83613aebe","part":"01a216c61565721a98c06b6ea61d6586","on":"2026-10-27","amount_cents":8500,"basis":"Three sales this year"}');
INSERT INTO history VALUES(278,2,'photo',X'01a216c615667613b448929a687e6adc',NULL,'{"id":"01a216c615667613b448929a687e6adc","part":"01a216c61565721a98c06b153ffd047e","machine":null,"lot":null,"content":"b8e50faf7f5d746a910d099f3a2bd9952c30f3356fe61ff79ceffc40fcc6cee9","extension":"jpg","width_px":800,"height_px":600,"added_on":"2024-12-26","added_sequence":471,"taken":"2024-12-26","view":"overview","caption":"As it came","is_map":0}');
INSERT INTO history VALUES(279,2,'photo',X'01a216c6158572999d48f7aef35e3271',NULL,'{"id":"01a216c6158572999d48f7aef35e3271","part":"01a216c61565721a98c06b196494c08c","machine":null,"lot":null,"content":"a330f18ff47f48e46293271446988b6ebcc3d5f311de374c2f2512e709ce14d4","extension":"jpg","width_px":800,"height_px":600,"added_on":"2025-04-05","added_sequence":475,"taken":"2025-04-05","view":"overview","caption":"As it came","is_map":0}');
INSERT INTO history VALUES(280,2,'photo',X'01a216c6158a76cbb3cf6c7d170cae01',NULL,'{"id":"01a216c6158a76cbb3cf6c7d170cae01","part":"01a216c61565721a98c06b1abacab539","machine":null,"lot":null,"content":"3be80863289b8d799aaa8e43183cc5ade5bbf71f6d314073ff790fb0b0d321e0","extension":"jpg","width_px":800,"height_px":600,"added_on":"2025-04-05","added_sequence":476,"taken":"2025-04-05","view":"overview","caption":"As it came","is_map":0}');
INSERT INTO history VALUES(281,2,'photo',X'01a216c615bd70cbb9e642e99d81b351',NULL,'{"id":"01a216c615bd70cbb9e642e99d81b351","part":"01a216c61565721a98c06b1e807dd967","machine":null,"lot":null,"content":"74cda5b6b2651daa3e3d70ba9590a930da5f6eb778d1fe442c97a3e38b894edb","extension":"jpg","width_px":800,"height_px":600,"added_on":"2025-04-05","added_sequence":480,"taken":"2025-04-05","view":"overview","caption":"As it came","is_map":0}');
INSERT INTO history VALUES(282,2,'photo',X'01a216c615d5771f90e84cde047784ef',NULL,'{"id":"01a216c615d5771f90e84cde047784ef","part":"01a216c61565721a98c06b21eaae18fc","machine":null,"lot":null,"content":"93433c347404c1264f0b84401c7a4707e931f41bdca02e8ee40f92781e71db71","extension":"jpg","width_px":800,"height_px":600,"added_on":"2025-07-14","added_sequence":483,"taken":"2025-07-14","view":"overview","caption":"As it came","is_map":0}');
INSERT INTO history VALUES(283,2,'photo',X'01a216c616467336bd5ca92a437f39c8',NULL,'{"id":"01a216c616467336bd5ca92a437f39c8","part":"01a216c61565721a98c06b36e1a5a538","machine":null,"lot":null,"content":"139c4360a13b41b245e8e06f80471edcf27b755cdcc4f9ba92e7d973fd37a871","extension":"jpg","width_px":800,"height_px":600,"added_on":"2024-11-16","added_sequence":503,"taken":"2024-11-16","view":"overview","caption":"As it came","is_map":0}');
INSERT INTO history VALUES(284,2,'photo',X'01a216c616fe7769954590b1899f9ec6',NULL,'{"id":"01a216c616fe7769954590b1899f9ec6","part":"01a216c61565721a98c06b5b91a71d8e","machine":null,"lot":null,"content":"2dc5034ad9176451132637e7e25760af4e30109ba0fa65395c65087cc9f126e0","extension":"jpg","width_px":800,"height_px":600,"added_on":"2025-12-31","added_sequence":538,"taken":"2025-12-31","view":"overview","caption":"As it came","is_map":1}');
INSERT INTO history VALUES(285,2,'photo_mark',X'01a216c615667613b448929b371c52c7',NULL,'{"id":"01a216c615667613b448929b371c52c7","photo":"01a216c615667613b448929a687e6adc","points":"[[0.8,0.18]]","finding":"01a216c615667613b448929177a727ec","capacitor":null,"marking":null,"work":null,"note":"","role":"place","length_mm":null,"breadth_mm":null,"red":null,"green":null,"blue":null,"clipped_percent":null,"proof":null}');
INSERT INTO history VALUES(286,2,'photo_mark',X'01a216c616467336bd5ca92be7c3d027',NULL,'{"id":"01a216c616467336bd5ca92be7c3d027","photo":"01a216c616467336bd5ca92a437f39c8","points":"[[0.8,0.19]]","finding":"01a216c6164573e79d247289163043d1","capacitor":null,"marking":null,"work":null,"note":"","role":"place","length_mm":null,"breadth_mm":null,"red":null,"green":null,"blue":null,"clipped_percent":null,"proof":null}');
INSERT INTO history VALUES(287,2,'photo_mark',X'01a216c616467336bd5ca92c1d57bb35',NULL,'{"id":"01a216c616467336bd5ca92c1d57bb35","photo":"01a216c616467336bd5ca92a437f39c8","points":"[[0.74,0.12]]","finding":"01a216c6164573e79d24728b9f7a391e","capacitor":null,"marking":null,"work":null,"note":"","role":"place","length_mm":null,"breadth_mm":null,"red":null,"green":null,"blue":null,"clipped_percent":null,"proof":null}');
INSERT INTO history VALUES(288,2,'photo_mark',X'01a216c616fe7769954590b2b157bfe8',NULL,'{"id":"01a216c616fe7769954590b2b157bfe8","photo":"01a216c616fe7769954590b1899f9ec6","points":"[[0.5,0.44]]","finding":"01a216c616fd76498a564dbfb3be285a","capacitor":null,"marking":null,"work":null,"note":"","role":"place","length_mm":null,"breadth_mm":null,"red":null,"green":null,"blue":null,"clipped_percent":null,"proof":null}');
INSERT INTO history VALUES(289,2,'photo_mark',X'01a216c616fe7769954590b317f58c94',NULL,'{"id":"01a216c616fe7769954590b317f58c94","photo":"01a216c616fe7769954590b1899f9ec6","points":"[[0.532,0.389]]","finding":null,"capacitor":"01a216c616fd76498a564dbc29eda0e3","marking":null,"work":null,"note":"","role":"place","length_mm":null,"breadth_mm":null,"red":null,"green":null,"blue":null,"clipped_percent":null,"proof":null}');
INSERT INTO history VALUES(290,2,'photo_mark',X'01a216c616fe7769954590b470c92b37',NULL,'{"id":"01a216c616fe7769954590b470c92b37","photo":"01a216c616fe7769954590b1899f9ec6","points":"[[0.532,0.44]]","finding":null,"capacitor":"01a216c616fd76498a564dbd2a9df6c8","marking":null,"work":null,"note":"","role":"place","length_mm":null,"breadth_mm":null,"red":null,"green":null,"blue":null,"clipped_percent":null,"proof":null}');
INSERT INTO history VALUES(291,2,'photo_mark',X'01a216c616fe7769954590b5d1caa532',NULL,'{"id":"01a216c616fe7769954590b5d1caa532","photo":"01a216c616fe7769954590b1899f9ec6","points":"[[0.532,0.49]]","finding":null,"capacitor":"01a216c616fd76498a564dbe1d04a8b7","marking":null,"work":null,"note":"","role":"place","length_mm":null,"breadth_mm":null,"red":null,"green":null,"blue":null,"clipped_percent":null,"proof":null}');
INSERT INTO history VALUES(292,2,'photo_mark',X'01a216c616fe7769954590b6bf98dde4',NULL,'{"id":"01a216c616fe7769954590b6bf98dde4","photo":"01a216c616fe7769954590b1899f9ec6","points":"[[0.532,0.54]]","finding":null,"capacitor":"01a216c616fd76498a564dc188cb2eba","marking":null,"work":null,"note":"","role":"place","length_mm":null,"breadth_mm":null,"red":null,"green":null,"blue":null,"clipped_percent":null,"proof":null}');
INSERT INTO history VALUES(293,2,'photo_mark',X'01a216c616fe7769954590b76d905c6c',NULL,'{"id":"01a216c616fe7769954590b76d905c6c","photo":"01a216c616fe7769954590b1899f9ec6","points":"[[0.532,0.591]]","finding":null,"capacitor":"01a216c616fd76498a564dc28ca53b9f","marking":null,"work":null,"note":"","role":"place","length_mm":null,"breadth_mm":null,"red":null,"green":null,"blue":null,"clipped_percent":null,"proof":null}');
INSERT INTO history VALUES(294,2,'photo_mark',X'01a216c616fe7769954590b8a8c89053',NULL,'{"id":"01a216c616fe7769954590b8a8c89053","photo":"01a216c616fe7769954590b1899f9ec6","points":"[[0.532,0.641]]","finding":null,"capacitor":"01a216c616fd76498a564dc3cfa25a67","marking":null,"work":null,"note":"","role":"place","length_mm":null,"breadth_mm":null,"red":null,"green":null,"blue":null,"clipped_percent":null,"proof":null}');
INSERT INTO history VALUES(295,2,'photo_mark',X'01a216c616fe7769954590b900176b77',NULL,'{"id":"01a216c616fe7769954590b900176b77","photo":"01a216c616fe7769954590b1899f9ec6","points":"[[0.789,0.44]]","finding":null,"capacitor":"01a216c616fd76498a564dc4819a82d6","marking":null,"work":null,"note":"","role":"place","length_mm":null,"breadth_mm":null,"red":null,"green":null,"blue":null,"clipped_percent":null,"proof":null}');
INSERT INTO history VALUES(296,2,'photo_mark',X'01a216c616fe7769954590ba6cf4a5ac',NULL,'{"id":"01a216c616fe7769954590ba6cf4a5ac","photo":"01a216c616fe7769954590b1899f9ec6","points":"[[0.789,0.49]]","finding":null,"capacitor":"01a216c616fd76498a564dc557f90924","marking":null,"work":null,"note":"","role":"place","length_mm":null,"breadth_mm":null,"red":null,"green":null,"blue":null,"clipped_percent":null,"proof":null}');
INSERT INTO history VALUES(297,2,'photo_mark',X'01a216c616fe7769954590bb4e9f4de4',NULL,'{"id":"01a216c616fe7769954590bb4e9f4de4","photo":"01a216c616fe7769954590b1899f9ec6","points":"[[0.789,0.54]]","finding":null,"capacitor":"01a216c616fd76498a564dc6494e1ee6","marking":null,"work":null,"note":"","role":"place","length_mm":null,"breadth_mm":null,"red":null,"green":null,"blue":null,"clipped_percent":null,"proof":null}');
INSERT INTO history VALUES(298,2,'photo_mark',X'01a216c616fe7769954590bc98871b0f',NULL,'{"id":"01a216c616fe7769954590bc98871b0f","photo":"01a216c616fe7769954590b1899f9ec6","points":"[[0.789,0.591]]","finding":null,"capacitor":"01a216c616fd76498a564dc706c3accb","marking":null,"work":null,"note":"","role":"place","length_mm":null,"breadth_mm":null,"red":null,"green":null,"blue":null,"clipped_percent":null,"proof":null}');
INSERT INTO history VALUES(299,2,'photo_mark',X'01a216c616fe7769954590bd5854f9cd',NULL,'{"id":"01a216c616fe7769954590bd5854f9cd","photo":"01a216c616fe7769954590b1899f9ec6","points":"[[0.355,0.39]]","finding":null,"capacitor":null,"marking":"01a216c616fd76498a564db4036b2065","work":null,"note":"","role":"place","length_mm":null,"breadth_mm":null,"red":null,"green":null,"blue":null,"clipped_percent":null,"proof":null}');
INSERT INTO history VALUES(300,2,'attachment',X'01a216c615667613b448929c1b9179d2',NULL,'{"id":"01a216c615667613b448929c1b9179d2","part":"01a216c61565721a98c06b153ffd047e","machine":null,"lot":null,"kind":"firmware_image","content":"962e6d7ca8dcf3fdfb665d2a66f54ced300e420cc2364c21309f83bc319bf896","file_name":"a286-odd.bin","bytes":34,"added_on":"2024-12-26","added_sequence":578,"note":"Two chips: this is the odd one.","proof":null}');
INSERT INTO history VALUES(301,2,'attachment',X'01a216c6158a76cbb3cf6c7e866096e1',NULL,'{"id":"01a216c6158a76cbb3cf6c7e866096e1","part":"01a216c61565721a98c06b1abacab539","machine":null,"lot":null,"kind":"firmware_image","content":"925114abc093d81c699cf503610067878fdccfa97dd8a8eeeda0526140df26d3","file_name":"oriel8.bin","bytes":23,"added_on":"2025-04-05","added_sequence":579,"note":"","proof":null}');
INSERT INTO history VALUES(302,2,'attachment',X'01a216c6160176d792712b5eb751bcab',NULL,'{"id":"01a216c6160176d792712b5eb751bcab","part":"01a216c61565721a98c06b2bd7b34964","machine":null,"lot":null,"kind":"firmware_image","content":"925114abc093d81c699cf503610067878fdccfa97dd8a8eeeda0526140df26d3","file_name":"a486vl.bin","bytes":23,"added_on":"2025-12-31","added_sequence":580,"note":"","proof":null}');
INSERT INTO history VALUES(303,2,'attachment',X'01a216c616fe7769954590bf9a8063a9',NULL,'{"id":"01a216c616fe7769954590bf9a8063a9","part":"01a216c61565721a98c06b5b91a71d8e","machine":null,"lot":null,"kind":"firmware_image","content":"925114abc093d81c699cf503610067878fdccfa97dd8a8eeeda0526140df26d3","file_name":"w370t.bin","bytes":23,"added_on":"2025-12-31","added_sequence":583,"note":"","proof":null}');
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
INSERT INTO workshop VALUES(X'01a216c6145971b7ba860ef8ac211b3a','Lantern Street Workshop','Ines Marlow','EUR','Volunteers who prepare the exhibit “At home and at work: computers 1988 to 2002”. Seven machines have to run under visitors'' hands. This is a sample: everything in it is invented, and everything in it may be changed.');
CREATE TABLE place (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  within BLOB REFERENCES place DEFERRABLE INITIALLY DEFERRED,
  name TEXT NOT NULL CHECK (name <> ''),
  note TEXT NOT NULL
) STRICT, WITHOUT ROWID;
INSERT INTO place VALUES(X'01a216c6153375ac87d6ccf38a6be87b',NULL,'Workshop','Ground floor, Lantern Street');
INSERT INTO place VALUES(X'01a216c6153375ac87d6ccf4604ad80b',X'01a216c6153375ac87d6ccf38a6be87b','Bench','');
INSERT INTO place VALUES(X'01a216c6153375ac87d6ccf50b3aa145',X'01a216c6153375ac87d6ccf38a6be87b','Shelf A','Boards and cards');
INSERT INTO place VALUES(X'01a216c6153375ac87d6ccf68f0bd74a',X'01a216c6153375ac87d6ccf50b3aa145','Box A1: mainboards','');
INSERT INTO place VALUES(X'01a216c6153375ac87d6ccf7ee1151b3',X'01a216c6153375ac87d6ccf50b3aa145','Box A2: cards','');
INSERT INTO place VALUES(X'01a216c6153375ac87d6ccf8b51fe81e',X'01a216c6153375ac87d6ccf50b3aa145','Box A3: processors and memory','');
INSERT INTO place VALUES(X'01a216c6153375ac87d6ccf992887030',X'01a216c6153375ac87d6ccf38a6be87b','Shelf B','Drives and supplies');
INSERT INTO place VALUES(X'01a216c6153375ac87d6ccfab57bf14e',X'01a216c6153375ac87d6ccf992887030','Box B1: disks','');
INSERT INTO place VALUES(X'01a216c6153375ac87d6ccfb66a69af4',X'01a216c6153375ac87d6ccf992887030','Box B2: drives with a tray or a slot','');
INSERT INTO place VALUES(X'01a216c6153375ac87d6ccfcea893e54',X'01a216c6153375ac87d6ccf38a6be87b','Drawer of small parts','Cables, posts, coolers, cells');
INSERT INTO place VALUES(X'01a216c6153375ac87d6ccfd6802ad68',NULL,'Store room','');
INSERT INTO place VALUES(X'01a216c6153375ac87d6ccfe4c546f71',X'01a216c6153375ac87d6ccfd6802ad68','Rack 1: cases','');
INSERT INTO place VALUES(X'01a216c6153375ac87d6ccff15936bdf',X'01a216c6153375ac87d6ccfd6802ad68','Rack 2: monitors and keyboards','');
INSERT INTO place VALUES(X'01a216c6153375ac87d6cd005498e606',X'01a216c6153375ac87d6ccfd6802ad68','Quarantine tub','Lidded, on the floor, away from everything that can corrode');
INSERT INTO place VALUES(X'01a216c6153375ac87d6cd01c0b37be3',NULL,'Exhibit hall','');
CREATE TABLE lot (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  name TEXT NOT NULL,
  acquired TEXT NOT NULL CHECK (acquired = '' OR acquired BETWEEN '1900' AND '2199-12-31'),
  source TEXT NOT NULL,
  price_cents INTEGER,
  note TEXT NOT NULL
) STRICT, WITHOUT ROWID;
INSERT INTO lot VALUES(X'01a216c6153375ac87d6cd028d3c1e3b','School clearance, Marshwick Lane','2024-09','Marshwick Lane School, the caretaker',18000,'One computer room of the early nineties. All of it stood in the same cellar: what one has, the others may have.');
INSERT INTO lot VALUES(X'01a216c6153375ac87d6cd03bcea2e28','Attic find, Tolver Street','2025-04','Family Ardwin',6000,'Dry attic, original boxes for some.');
INSERT INTO lot VALUES(X'01a216c6153375ac87d6cd042ea834dd','Swap meet, Fennhall','2025-12','Several tables',14500,'');
INSERT INTO lot VALUES(X'01a216c6153375ac87d6cd05f58ff9fb','Harbour office clear-out','2025-08','Port administration, through Bram Holt',0,'Given free against collection. Salt air: look at every contact.');
INSERT INTO lot VALUES(X'01a216c6153375ac87d6cd0648dfd33f','Box of cards, auction','2026-04','Online auction, “untested, from storage”',8800,'');
INSERT INTO lot VALUES(X'01a216c6153375ac87d6cd0766737cd7','Studio Pellam closes down','2026-06','Studio Pellam',12000,'Ran until 2004, then stored warm and dry.');
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
INSERT INTO design VALUES(X'01a216c6153375ac87d6cd1736f7b7fc','mainboard','Aldmoor','A286-16','C','1988','1991','286 class processor soldered in; cell soldered beside the keyboard port.');
INSERT INTO design VALUES(X'01a216c6153375ac87d6cd2175509f20','mainboard','Aldmoor','A386-40','1.2','1990','1993','');
INSERT INTO design VALUES(X'01a216c6153375ac87d6cd2da07c2f0c','mainboard','Quoxby','QB-386W','B','1991','1993','');
INSERT INTO design VALUES(X'01a216c6153375ac87d6cd38fb0e5853','mainboard','Aldmoor','A486-VL','2.0','1992','1995','');
INSERT INTO design VALUES(X'01a216c6153375ac87d6cd46fea7b34a','mainboard','Quoxby','QB-486S','A','1993','1995','');
INSERT INTO design VALUES(X'01a216c6153375ac87d6cd7d5fe3dfd9','mainboard','Wexdale','W370-T','2.1','2000-05','2002','Six capacitors round the processor are of the years that went bad.');
INSERT INTO design VALUES(X'01a216c6153375ac87d6cda915dc7c20','processor','Lorrith','Cartessa 450','','1998-09','2000','Comes with a heavy cooler: needs the posts and the support under it.');
INSERT INTO design VALUES(X'01a216c6153375ac87d6cdb7033ead36','memory_module','Tumok','TMK-1M30-70','','1989','1994','');
INSERT INTO design VALUES(X'01a216c6153375ac87d6cdbfb6544369','memory_module','Tumok','TMK-128S-100','','1998-05','2002','');
INSERT INTO design VALUES(X'01a216c6153375ac87d6cdd46d08d1db','video_card','Orbelis','Oriel 8','','1988','1991','');
INSERT INTO design VALUES(X'01a216c6153471b7ae2db15fddaccc54','sound_card','Sonderwick','Choir 8','','1990','1993','Silent without −5 V.');
INSERT INTO design VALUES(X'01a216c6153471b7ae2db164b12f80bc','sound_card','Sonderwick','Choir 16','1.3','1993','1997','');
INSERT INTO design VALUES(X'01a216c6153471b7ae2db1e8ac5c5098','power_supply','Galvenor','GV-200A','','1988','1996','');
INSERT INTO design VALUES(X'01a216c6153471b7ae2db1f3d9922ad1','power_supply','Galvenor','GV-230A','','1991','1998','');
INSERT INTO design VALUES(X'01a216c6153471b7ae2db1fd041c60af','power_supply','Galvenor','GV-250X','','1997','2001','');
INSERT INTO design VALUES(X'01a216c6153471b7ae2db220f96ea9a2','monitor','Vesperlyn','V14','','1990','1995','');
INSERT INTO design VALUES(X'01a216c6153471b7ae2db22298347e5f','monitor','Vesperlyn','V17S','','1997','2002','');
CREATE TABLE design_connector (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  design BLOB NOT NULL REFERENCES design DEFERRABLE INITIALLY DEFERRED,
  side TEXT NOT NULL CHECK (side IN ('offers', 'needs')),
  connector TEXT NOT NULL,
  count INTEGER NOT NULL CHECK (count >= 1),
  note TEXT NOT NULL
) STRICT, WITHOUT ROWID;
INSERT INTO design_connector VALUES(X'01a216c6153375ac87d6cd1862cbf649',X'01a216c6153375ac87d6cd1736f7b7fc','offers','isa-16',5,'');
INSERT INTO design_connector VALUES(X'01a216c6153375ac87d6cd199394c6e2',X'01a216c6153375ac87d6cd1736f7b7fc','offers','isa-8',1,'');
INSERT INTO design_connector VALUES(X'01a216c6153375ac87d6cd1a26b0eb2c',X'01a216c6153375ac87d6cd1736f7b7fc','offers','keyboard-at-din',1,'');
INSERT INTO design_connector VALUES(X'01a216c6153375ac87d6cd1be1141d6a',X'01a216c6153375ac87d6cd1736f7b7fc','offers','simm-30',4,'');
INSERT INTO design_connector VALUES(X'01a216c6153375ac87d6cd1c6ba65dca',X'01a216c6153375ac87d6cd1736f7b7fc','needs','at-p8p9',1,'');
INSERT INTO design_connector VALUES(X'01a216c6153375ac87d6cd1d619b67ef',X'01a216c6153375ac87d6cd1736f7b7fc','needs','baby-at',1,'');
INSERT INTO design_connector VALUES(X'01a216c6153375ac87d6cd222271dc64',X'01a216c6153375ac87d6cd2175509f20','offers','isa-16',6,'');
INSERT INTO design_connector VALUES(X'01a216c6153375ac87d6cd2337553ac5',X'01a216c6153375ac87d6cd2175509f20','offers','isa-8',2,'');
INSERT INTO design_connector VALUES(X'01a216c6153375ac87d6cd24b225e228',X'01a216c6153375ac87d6cd2175509f20','offers','keyboard-at-din',1,'');
INSERT INTO design_connector VALUES(X'01a216c6153375ac87d6cd25cdcb5d1c',X'01a216c6153375ac87d6cd2175509f20','offers','pga-121-coprocessor',1,'');
INSERT INTO design_connector VALUES(X'01a216c6153375ac87d6cd268f8ad014',X'01a216c6153375ac87d6cd2175509f20','offers','pga-132',1,'');
INSERT INTO design_connector VALUES(X'01a216c6153375ac87d6cd277441432f',X'01a216c6153375ac87d6cd2175509f20','offers','simm-30',8,'');
CREATE TABLE design_figure (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  design BLOB NOT NULL REFERENCES design DEFERRABLE INITIALLY DEFERRED,
  figure TEXT NOT NULL,
  value REAL NOT NULL,
  source TEXT NOT NULL
, at_bus_mhz REAL CHECK (at_bus_mhz > 0)) STRICT, WITHOUT ROWID;
INSERT INTO design_figure VALUES(X'01a216c6153375ac87d6cd1e4cf9b02e',X'01a216c6153375ac87d6cd1736f7b7fc','bus_clock_mhz',16.0,'Label and print on the part',NULL);
INSERT INTO design_figure VALUES(X'01a216c6153375ac87d6cd1f0cb691b5',X'01a216c6153375ac87d6cd1736f7b7fc','current_5v_a',2.3999999999999999111,'Label and print on the part',NULL);
INSERT INTO design_figure VALUES(X'01a216c6153375ac87d6cd2009c04e6c',X'01a216c6153375ac87d6cd1736f7b7fc','memory_most_mb',4.0,'Label and print on the part',NULL);
INSERT INTO design_figure VALUES(X'01a216c6153375ac87d6cd2ac5016631',X'01a216c6153375ac87d6cd2175509f20','bus_clock_mhz',40.0,'Label and print on the part',NULL);
INSERT INTO design_figure VALUES(X'01a216c6153375ac87d6cd2bf5779f56',X'01a216c6153375ac87d6cd2175509f20','current_5v_a',3.1000000000000000888,'Label and print on the part',NULL);
INSERT INTO design_figure VALUES(X'01a216c6153375ac87d6cd2cfe6c75b2',X'01a216c6153375ac87d6cd2175509f20','memory_most_mb',32.0,'Label and print on the part',NULL);
INSERT INTO design_figure VALUES(X'01a216c6153375ac87d6cd3531208e9c',X'01a216c6153375ac87d6cd2da07c2f0c','bus_clock_mhz',33.0,'Label and print on the part',NULL);
INSERT INTO design_figure VALUES(X'01a216c6153375ac87d6cd36757fe57b',X'01a216c6153375ac87d6cd2da07c2f0c','current_5v_a',2.8999999999999999111,'Label and print on the part',NULL);
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
, capacitance_uf REAL CHECK (capacitance_uf > 0), voltage_v REAL CHECK (voltage_v > 0), temperature_c REAL, diameter_mm REAL CHECK (diameter_mm > 0), height_mm REAL CHECK (height_mm > 0), pitch_mm REAL CHECK (pitch_mm > 0), dielectric TEXT CHECK (
  dielectric IN ('wet_aluminium', 'polymer', 'tantalum', 'film', 'suppression', 'ceramic', 'unknown')), mounting TEXT CHECK (mounting IN ('radial', 'axial', 'surface', 'snap_in', 'unknown')), low_esr INTEGER CHECK (low_esr IN (0, 1)), on_order REAL NOT NULL DEFAULT 0 CHECK (on_order >= 0)) STRICT, WITHOUT ROWID;
INSERT INTO material VALUES(X'01a216c6153375ac87d6cd082cf49771','White vinegar, or citric acid 5 % in water','ml',400.0,250.0,X'01a216c6153375ac87d6ccf4604ad80b',1,'','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,12.0);
INSERT INTO material VALUES(X'01a216c6153375ac87d6cd095e6cde2d','Alcohol 90 % or more','ml',150.0,500.0,X'01a216c6153375ac87d6ccf4604ad80b',1,'Chemist at the corner','Running low.',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0.0);
INSERT INTO material VALUES(X'01a216c6153375ac87d6cd0a85255862','Deionised water','ml',3000.0,1000.0,X'01a216c6153375ac87d6ccf4604ad80b',NULL,'','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0.0);
INSERT INTO material VALUES(X'01a216c6153375ac87d6cd0bfe6d48a1','Contact cleaner','ml',180.0,100.0,X'01a216c6153375ac87d6ccf4604ad80b',NULL,'','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0.0);
INSERT INTO material VALUES(X'01a216c6153375ac87d6cd0cf31b953d','Solder','g',220.0,50.0,X'01a216c6153375ac87d6ccf4604ad80b',NULL,'','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0.0);
INSERT INTO material VALUES(X'01a216c6153375ac87d6cd0d9c7e25b9','Flux','ml',12.0,10.0,X'01a216c6153375ac87d6ccf4604ad80b',NULL,'','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0.0);
INSERT INTO material VALUES(X'01a216c6153375ac87d6cd0e73e0c297','Desoldering braid','m',1.5,1.0,X'01a216c6153375ac87d6ccf4604ad80b',NULL,'','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0.0);
INSERT INTO material VALUES(X'01a216c6153375ac87d6cd0f787c50b7','Fine tinned or enamelled wire','m',20.0,5.0,X'01a216c6153375ac87d6ccf4604ad80b',NULL,'','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0.0);
INSERT INTO material VALUES(X'01a216c6153375ac87d6cd100afb903b','Capacitor 1000 µF 6.3 V, low ESR, 8 mm','piece',1.0,10.0,X'01a216c6153375ac87d6ccfcea893e54',35,'Hollin Parts by post','One left after the first half of 0071.',1000.0,6.2999999999999998223,105.0,8.0,16.0,NULL,'wet_aluminium','radial',1,0.0);
INSERT INTO material VALUES(X'01a216c6153375ac87d6cd11c30fd559','Capacitor 10 µF 25 V, surface mount','piece',30.0,10.0,X'01a216c6153375ac87d6ccfcea893e54',18,'','',10.0,25.0,105.0,4.0,5.4000000000000003552,NULL,'wet_aluminium','surface',NULL,0.0);
INSERT INTO material VALUES(X'01a216c6153375ac87d6cd12d4d8984b','Coin cell CR2032','piece',6.0,4.0,X'01a216c6153375ac87d6ccfcea893e54',90,'','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0.0);
INSERT INTO material VALUES(X'01a216c6153375ac87d6cd13743d7f3d','Capacitor 470 µF 16 V, 8 mm','piece',9.0,0.0,X'01a216c6153375ac87d6ccfcea893e54',22,'','',470.0,16.0,105.0,8.0,11.499999999999999999,NULL,'wet_aluminium','radial',NULL,0.0);
INSERT INTO material VALUES(X'01a216c6153375ac87d6cd142efc9e1a','Thermal paste','g',8.0,3.0,X'01a216c6153375ac87d6ccf4604ad80b',NULL,'','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0.0);
INSERT INTO material VALUES(X'01a216c6153375ac87d6cd15de7780dd','Plastic-safe grease','g',25.0,10.0,X'01a216c6153375ac87d6ccf4604ad80b',NULL,'','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0.0);
INSERT INTO material VALUES(X'01a216c6153375ac87d6cd16a29c0024','Shielding bag','piece',35.0,20.0,X'01a216c6153375ac87d6ccf50b3aa145',25,'','',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0.0);
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
INSERT INTO part VALUES(X'01a216c61565721a98c06b153ffd047e','0001','mainboard',X'01a216c6153375ac87d6cd1736f7b7fc','','A286-014417','original',X'01a216c6153375ac87d6cd028d3c1e3b',1500,'',X'01a216c6153375ac87d6cd01c0b37be3',NULL,'','','');
INSERT INTO part VALUES(X'01a216c61565721a98c06b196494c08c','0005','memory_module',X'01a216c6153375ac87d6cdb7033ead36','','','original',X'01a216c6153375ac87d6cd028d3c1e3b',200,'',X'01a216c6153375ac87d6cd01c0b37be3',NULL,'','','');
INSERT INTO part VALUES(X'01a216c61565721a98c06b1abacab539','0006','video_card',X'01a216c6153375ac87d6cdd46d08d1db','','','original',X'01a216c6153375ac87d6cd028d3c1e3b',600,'',X'01a216c6153375ac87d6cd01c0b37be3',NULL,'','','');
INSERT INTO part VALUES(X'01a216c61565721a98c06b1e807dd967','0010','power_supply',X'01a216c6153471b7ae2db1e8ac5c5098','','GV200-88120','original',X'01a216c6153375ac87d6cd028d3c1e3b',1000,'',X'01a216c6153375ac87d6cd01c0b37be3',NULL,'','','');
INSERT INTO part VALUES(X'01a216c61565721a98c06b21eaae18fc','0013','mainboard',X'01a216c6153375ac87d6cd46fea7b34a','','QB4-77120','original',X'01a216c6153375ac87d6cd03bcea2e28',2500,'',X'01a216c6153375ac87d6cd01c0b37be3',NULL,'','','');
INSERT INTO part VALUES(X'01a216c61565721a98c06b2bd7b34964','0023','mainboard',X'01a216c6153375ac87d6cd38fb0e5853','','A486-22071','original',X'01a216c6153375ac87d6cd042ea834dd',4000,'',X'01a216c6153375ac87d6cd01c0b37be3',NULL,'','','');
INSERT INTO part VALUES(X'01a216c61565721a98c06b36e1a5a538','0034','mainboard',X'01a216c6153375ac87d6cd2175509f20','','A386-100931','original',X'01a216c6153375ac87d6cd028d3c1e3b',2000,'',X'01a216c6153375ac87d6ccf68f0bd74a',NULL,'','','The school''s own board, with a rusty past: cleaned, tracks mended, not started since.');
INSERT INTO part VALUES(X'01a216c61565721a98c06b37ad760c92','0035','mainboard',X'01a216c6153375ac87d6cd2da07c2f0c','','QB3-20318','original',X'01a216c6153375ac87d6cd03bcea2e28',1800,'',X'01a216c6153375ac87d6ccf68f0bd74a',NULL,'','','');
INSERT INTO part VALUES(X'01a216c61565721a98c06b460edb198b','0050','sound_card',X'01a216c6153471b7ae2db164b12f80bc','','','original',X'01a216c6153375ac87d6cd03bcea2e28',800,'',X'01a216c6153375ac87d6cd01c0b37be3',NULL,'','','');
INSERT INTO part VALUES(X'01a216c61565721a98c06b4f131d95da','0059','processor',X'01a216c6153375ac87d6cda915dc7c20','','L1450-220','original',X'01a216c6153375ac87d6cd0766737cd7',2000,'',X'01a216c6153375ac87d6ccf8b51fe81e',NULL,'','','Posts and support stayed in the scrapped board. Without them the card rocks in its slot.');
INSERT INTO part VALUES(X'01a216c61565721a98c06b50a358ebf0','0060','memory_module',X'01a216c6153375ac87d6cdbfb6544369','','','original',X'01a216c6153375ac87d6cd0766737cd7',500,'',X'01a216c6153375ac87d6cd01c0b37be3',NULL,'','','');
INSERT INTO part VALUES(X'01a216c61565721a98c06b58f941d1fd','0068','power_supply',X'01a216c6153471b7ae2db1fd041c60af','','GVX-99-7712','original',X'01a216c6153375ac87d6cd0766737cd7',900,'',X'01a216c6153375ac87d6cd01c0b37be3',NULL,'','','');
INSERT INTO part VALUES(X'01a216c61565721a98c06b5b91a71d8e','0071','mainboard',X'01a216c6153375ac87d6cd7d5fe3dfd9','','W370-01-2290','original',X'01a216c6153375ac87d6cd042ea834dd',1500,'',X'01a216c6153375ac87d6cd01c0b37be3',NULL,'','','');
INSERT INTO part VALUES(X'01a216c61565721a98c06b5e8efdf77f','0074','memory_module',X'01a216c6153375ac87d6cdbfb6544369','','','original',X'01a216c6153375ac87d6cd042ea834dd',400,'',X'01a216c6153375ac87d6cd01c0b37be3',NULL,'','','');
INSERT INTO part VALUES(X'01a216c61565721a98c06b62c4ad9e9c','0078','power_supply',X'01a216c6153471b7ae2db1fd041c60af','','GVX-01-1002','original',X'01a216c6153375ac87d6cd042ea834dd',700,'',X'01a216c6153375ac87d6cd01c0b37be3',NULL,'','','');
INSERT INTO part VALUES(X'01a216c61565721a98c06b6ea61d6586','0090','sound_card',X'01a216c6153471b7ae2db15fddaccc54','','C8-0771','original',X'01a216c6153375ac87d6cd0648dfd33f',1800,'',X'01a216c6153375ac87d6ccf7ee1151b3',NULL,'','','Silent without −5 V: check the supply before blaming the card.');
INSERT INTO part VALUES(X'01a216c615667613b44892808f06a4da','0105','monitor',X'01a216c6153471b7ae2db220f96ea9a2','','V14-91-2207','original',NULL,NULL,'2026-07',X'01a216c6153375ac87d6cd01c0b37be3',NULL,'','','On loan for the exhibit.');
INSERT INTO part VALUES(X'01a216c615667613b44892814466601f','0106','monitor',X'01a216c6153471b7ae2db22298347e5f','','','original',X'01a216c6153375ac87d6cd0766737cd7',1500,'',NULL,NULL,'','','Lent for a school play; due back.');
INSERT INTO part VALUES(X'01a216c615667613b44892890bdcc2e3','0114','power_supply',X'01a216c6153471b7ae2db1f3d9922ad1','','GV230-55120','original',X'01a216c6153375ac87d6cd05f58ff9fb',0,'',NULL,NULL,'','','');
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
INSERT INTO machine VALUES(X'01a216c617cd741c848f9ea8a85605b9','The front desk, 1989','Visitors type their name into a guest book, as at the desk of a small firm.','1988','1990','typical',2,'Nearly there: only the clock still wants a supply, so that the date holds overnight.');
INSERT INTO machine VALUES(X'01a216c617e372fd8372798b27dd465d','The schoolroom, 1991','A pupil''s first lines of a program, as in the computer room of Marshwick Lane School.','1990','1992','typical',4,'No supply, disk or case yet. Two boards would suit; the decision is open.');
INSERT INTO machine VALUES(X'01a216c617f070cc8c93ec48860cbb5d','The net café, 2001','Ten minutes a coin: a browser, a chat, a queue behind you.','2000','2002','modest',7,'Three of six capacitors round the processor are new; the others are on order. No power before the rest is done.');
CREATE TABLE role (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  machine BLOB NOT NULL REFERENCES machine DEFERRABLE INITIALLY DEFERRED,
  kind TEXT NOT NULL,
  name TEXT NOT NULL,
  required INTEGER NOT NULL CHECK (required IN (0, 1)),
  count INTEGER NOT NULL CHECK (count >= 1),
  note TEXT NOT NULL
, or_kinds TEXT NOT NULL DEFAULT '[]' CHECK (json_valid(or_kinds))) STRICT, WITHOUT ROWID;
INSERT INTO role VALUES(X'01a216c617cd741c848f9ea9736d8259',X'01a216c617cd741c848f9ea8a85605b9','mainboard','',1,1,'','[]');
INSERT INTO role VALUES(X'01a216c617cd741c848f9eab6b5d2d1b',X'01a216c617cd741c848f9ea8a85605b9','memory_module','Memory, one bank',1,4,'','[]');
INSERT INTO role VALUES(X'01a216c617cd741c848f9eb0148d67a9',X'01a216c617cd741c848f9ea8a85605b9','video_card','',1,1,'','[]');
INSERT INTO role VALUES(X'01a216c617cd741c848f9eb20b01d0d5',X'01a216c617cd741c848f9ea8a85605b9','multi_io_card','',1,1,'','[]');
INSERT INTO role VALUES(X'01a216c617cd741c848f9eb49bb80883',X'01a216c617cd741c848f9ea8a85605b9','hard_disk','',1,1,'','[]');
INSERT INTO role VALUES(X'01a216c617cd741c848f9eb676534c95',X'01a216c617cd741c848f9ea8a85605b9','floppy_drive','',1,1,'','[]');
INSERT INTO role VALUES(X'01a216c617cd741c848f9eb897fe00ec',X'01a216c617cd741c848f9ea8a85605b9','power_supply','',1,1,'','[]');
INSERT INTO role VALUES(X'01a216c617cd741c848f9eba9345687e',X'01a216c617cd741c848f9ea8a85605b9','case','',1,1,'','[]');
INSERT INTO role VALUES(X'01a216c617cd741c848f9ebcb926ad0c',X'01a216c617cd741c848f9ea8a85605b9','keyboard','',1,1,'','[]');
INSERT INTO role VALUES(X'01a216c617cd741c848f9ebec599ef34',X'01a216c617cd741c848f9ea8a85605b9','monitor','',0,1,'White phosphor suits the year.','[]');
INSERT INTO role VALUES(X'01a216c617e372fd8372798c7679a043',X'01a216c617e372fd8372798b27dd465d','mainboard','',1,1,'','[]');
INSERT INTO role VALUES(X'01a216c617e372fd8372798fe664bb7d',X'01a216c617e372fd8372798b27dd465d','processor','',1,1,'','[]');
INSERT INTO role VALUES(X'01a216c617e372fd83727991b16101b5',X'01a216c617e372fd8372798b27dd465d','coprocessor','',0,1,'','[]');
INSERT INTO role VALUES(X'01a216c617e372fd83727993eec9a1a9',X'01a216c617e372fd8372798b27dd465d','memory_module','Memory, one bank',1,4,'','[]');
INSERT INTO role VALUES(X'01a216c617e372fd83727998f800da81',X'01a216c617e372fd8372798b27dd465d','video_card','',1,1,'','[]');
INSERT INTO role VALUES(X'01a216c617e372fd8372799a233ab23f',X'01a216c617e372fd8372798b27dd465d','multi_io_card','',1,1,'','[]');
INSERT INTO role VALUES(X'01a216c617e372fd8372799b2a30e0ac',X'01a216c617e372fd8372798b27dd465d','hard_disk','',1,1,'','[]');
INSERT INTO role VALUES(X'01a216c617e372fd8372799c1f7bc9f1',X'01a216c617e372fd8372798b27dd465d','floppy_drive','',1,1,'','[]');
INSERT INTO role VALUES(X'01a216c617e372fd8372799e29a818c6',X'01a216c617e372fd8372798b27dd465d','power_supply','',1,1,'','[]');
INSERT INTO role VALUES(X'01a216c617e372fd8372799f86c42bd1',X'01a216c617e372fd8372798b27dd465d','case','',1,1,'A flat one, as in the school.','[]');
INSERT INTO role VALUES(X'01a216c617e372fd837279a05052331a',X'01a216c617e372fd8372798b27dd465d','keyboard','',1,1,'','[]');
INSERT INTO role VALUES(X'01a216c617f070cc8c93ec491ddca3d5',X'01a216c617f070cc8c93ec48860cbb5d','mainboard','',1,1,'','[]');
INSERT INTO role VALUES(X'01a216c617f070cc8c93ec4b20e1343f',X'01a216c617f070cc8c93ec48860cbb5d','processor','',1,1,'','[]');
INSERT INTO role VALUES(X'01a216c617f070cc8c93ec4d1dc362e4',X'01a216c617f070cc8c93ec48860cbb5d','cooler','',1,1,'','[]');
INSERT INTO role VALUES(X'01a216c617f070cc8c93ec4f0ce2fedf',X'01a216c617f070cc8c93ec48860cbb5d','memory_module','',1,1,'','[]');
INSERT INTO role VALUES(X'01a216c617f070cc8c93ec51e0e011e7',X'01a216c617f070cc8c93ec48860cbb5d','video_card','',1,1,'','[]');
INSERT INTO role VALUES(X'01a216c617f070cc8c93ec532164a5dc',X'01a216c617f070cc8c93ec48860cbb5d','network_card','',1,1,'','[]');
INSERT INTO role VALUES(X'01a216c617f070cc8c93ec55ee22eb1c',X'01a216c617f070cc8c93ec48860cbb5d','hard_disk','',1,1,'','[]');
INSERT INTO role VALUES(X'01a216c617f070cc8c93ec57de33689a',X'01a216c617f070cc8c93ec48860cbb5d','power_supply','',1,1,'','[]');
INSERT INTO role VALUES(X'01a216c617f070cc8c93ec59d9b8aef5',X'01a216c617f070cc8c93ec48860cbb5d','case','',1,1,'','[]');
INSERT INTO role VALUES(X'01a216c617f070cc8c93ec5b0d53586f',X'01a216c617f070cc8c93ec48860cbb5d','keyboard','',1,1,'','[]');
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
INSERT INTO placement VALUES(X'01a216c617e372fd8372798d3a9fa241',X'01a216c617e372fd8372798b27dd465d',X'01a216c617e372fd8372798c7679a043',X'01a216c61565721a98c06b36e1a5a538',0,'2026-06-29',417,'Decide after the bench start of 0035.');
INSERT INTO placement VALUES(X'01a216c617e372fd8372798e9bc176f8',X'01a216c617e372fd8372798b27dd465d',X'01a216c617e372fd8372798c7679a043',X'01a216c61565721a98c06b37ad760c92',0,'2026-06-29',418,'Decide after the bench start of 0035.');
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
INSERT INTO fitting VALUES(X'01a216c617cd741c848f9eaaac763105',X'01a216c617cd741c848f9ea8a85605b9',X'01a216c617cd741c848f9ea9736d8259',X'01a216c61565721a98c06b153ffd047e','2026-10-12',372,NULL,NULL,'');
INSERT INTO fitting VALUES(X'01a216c617cd741c848f9eafee395e62',X'01a216c617cd741c848f9ea8a85605b9',X'01a216c617cd741c848f9eab6b5d2d1b',X'01a216c61565721a98c06b196494c08c','2026-10-12',376,NULL,NULL,'');
INSERT INTO fitting VALUES(X'01a216c617cd741c848f9eb11fb09cd6',X'01a216c617cd741c848f9ea8a85605b9',X'01a216c617cd741c848f9eb0148d67a9',X'01a216c61565721a98c06b1abacab539','2026-10-12',377,NULL,NULL,'');
INSERT INTO fitting VALUES(X'01a216c617cd741c848f9eb9f5c833b4',X'01a216c617cd741c848f9ea8a85605b9',X'01a216c617cd741c848f9eb897fe00ec',X'01a216c61565721a98c06b1e807dd967','2026-10-12',381,NULL,NULL,'');
INSERT INTO fitting VALUES(X'01a216c617cd741c848f9ebfd26da8bf',X'01a216c617cd741c848f9ea8a85605b9',X'01a216c617cd741c848f9ebec599ef34',X'01a216c615667613b44892808f06a4da','2026-10-12',384,NULL,NULL,'');
INSERT INTO fitting VALUES(X'01a216c617f070cc8c93ec4a80daedf5',X'01a216c617f070cc8c93ec48860cbb5d',X'01a216c617f070cc8c93ec491ddca3d5',X'01a216c61565721a98c06b5b91a71d8e','2026-11-11',454,NULL,NULL,'');
INSERT INTO fitting VALUES(X'01a216c617f070cc8c93ec50af74c84d',X'01a216c617f070cc8c93ec48860cbb5d',X'01a216c617f070cc8c93ec4f0ce2fedf',X'01a216c61565721a98c06b5e8efdf77f','2026-11-11',457,NULL,NULL,'');
INSERT INTO fitting VALUES(X'01a216c617f070cc8c93ec58e2bce4de',X'01a216c617f070cc8c93ec48860cbb5d',X'01a216c617f070cc8c93ec57de33689a',X'01a216c61565721a98c06b62c4ad9e9c','2026-11-11',461,NULL,NULL,'');
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
INSERT INTO power_on VALUES(X'01a216c617cd741c848f9ec21543889f',X'01a216c617cd741c848f9ea8a85605b9','2026-10-13',387,'Board, one bank of memory, video, multi-I/O; then floppy; then disk.','Board jumpers as noted; disk as only drive.','Three seconds, off, felt all parts. Then to the first picture. Floppy, disk, keyboard one by one.','well','Checksum message because nothing feeds the clock; otherwise straight to the prompt.','Ines Marlow');
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
INSERT INTO marking VALUES(X'01a216c615667613b448928a7f6f15cf',X'01a216c61565721a98c06b153ffd047e','2024-12-26',1,'board','lower edge','9012','yes','',NULL,'');
INSERT INTO marking VALUES(X'01a216c615667613b448928b4188f4d4',X'01a216c61565721a98c06b153ffd047e','2024-12-26',2,'chip','chip set','LR8215 8947','yes','',NULL,'');
INSERT INTO marking VALUES(X'01a216c615667613b448928c4112c992',X'01a216c61565721a98c06b153ffd047e','2024-12-26',3,'chip','keyboard controller','QX8742 9003','yes','',NULL,'');
INSERT INTO marking VALUES(X'01a216c615897242bbdd45aef7404a80',X'01a216c61565721a98c06b1abacab539','2025-04-05',23,'board','solder side','8951','yes','',NULL,'');
INSERT INTO marking VALUES(X'01a216c615897242bbdd45af50e774f0',X'01a216c61565721a98c06b1abacab539','2025-04-05',24,'chip','main chip','ORB8 8946','yes','',NULL,'');
INSERT INTO marking VALUES(X'01a216c615bd70cbb9e642e0003524e7',X'01a216c61565721a98c06b1e807dd967','2025-04-05',39,'sticker','lid','WEEK 08 1990','yes','',NULL,'');
INSERT INTO marking VALUES(X'01a216c615d5771f90e84cd62df59920',X'01a216c61565721a98c06b21eaae18fc','2025-07-14',52,'board','beside the slots','9427','yes','',NULL,'');
INSERT INTO marking VALUES(X'01a216c615d5771f90e84cd70e7e16a5',X'01a216c61565721a98c06b21eaae18fc','2025-07-14',53,'chip','chip set','QX4210 9419','yes','',NULL,'');
INSERT INTO marking VALUES(X'01a216c615d5771f90e84cd8e3048f01',X'01a216c61565721a98c06b21eaae18fc','2025-07-14',54,'sticker','firmware chip','07/94','yes','',NULL,'');
INSERT INTO marking VALUES(X'01a216c6160176d792712b578c62eb3e',X'01a216c61565721a98c06b2bd7b34964','2025-12-31',82,'board','by the memory sockets','9313','yes','',NULL,'');
INSERT INTO marking VALUES(X'01a216c6160176d792712b58607ad259',X'01a216c61565721a98c06b2bd7b34964','2025-12-31',83,'chip','chip set','LR8401 9304','yes','',NULL,'');
INSERT INTO marking VALUES(X'01a216c6164573e79d247286c2cf4306',X'01a216c61565721a98c06b36e1a5a538','2024-11-16',132,'board','lower edge','9126','yes','',NULL,'');
INSERT INTO marking VALUES(X'01a216c6164573e79d247287311dc1a6',X'01a216c61565721a98c06b36e1a5a538','2024-11-16',133,'chip','chip set','LR8310 9118','yes','',NULL,'');
INSERT INTO marking VALUES(X'01a216c6165172e7afd95f610274201d',X'01a216c61565721a98c06b37ad760c92','2025-06-04',145,'board','beside the slots','9204','yes','',NULL,'');
INSERT INTO marking VALUES(X'01a216c6165172e7afd95f62e89e2c48',X'01a216c61565721a98c06b37ad760c92','2025-06-04',146,'chip','chip set','QX3110 9149','yes','',NULL,'');
INSERT INTO marking VALUES(X'01a216c6169973aeb546fb8fe96a2c54',X'01a216c61565721a98c06b460edb198b','2026-10-22',189,'board','upper edge','9535','yes','',NULL,'');
INSERT INTO marking VALUES(X'01a216c616c974028db1519940c03b77',X'01a216c61565721a98c06b4f131d95da','2026-07-09',207,'sticker','cartridge','9906','yes','',NULL,'');
INSERT INTO marking VALUES(X'01a216c616cd7013b5d309807ca88ec7',X'01a216c61565721a98c06b50a358ebf0','2026-07-09',210,'chip','first chip','TMK 9908','yes','',NULL,'');
INSERT INTO marking VALUES(X'01a216c616fd76498a564db4036b2065',X'01a216c61565721a98c06b5b91a71d8e','2025-12-31',235,'board','by the last slot','0126','yes','',NULL,'');
INSERT INTO marking VALUES(X'01a216c616fd76498a564db5726198df',X'01a216c61565721a98c06b5b91a71d8e','2025-12-31',236,'chip','chip set','WX3700 0119','yes','',NULL,'');
INSERT INTO marking VALUES(X'01a216c616fd76498a564db625eaab78',X'01a216c61565721a98c06b5b91a71d8e','2025-12-31',237,'capacitor','C4','0111','yes','',NULL,'');
INSERT INTO marking VALUES(X'01a216c61755733b99484f9f687ca544',X'01a216c61565721a98c06b6ea61d6586','2026-05-10',313,'board','upper edge','9102','yes','',NULL,'');
INSERT INTO marking VALUES(X'01a216c61755733b99484fa016ae72cc',X'01a216c61565721a98c06b6ea61d6586','2026-05-10',314,'chip','amplifier','9630','unknown','',NULL,'');
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
INSERT INTO survey VALUES(X'01a216c615667613b44892905ff124d3',X'01a216c61565721a98c06b153ffd047e','2024-12-26',7,'Ines Marlow','On arrival',NULL,'','[{"question":"running","given":{"is":"seen"}},{"question":"clock-supply","given":{"is":"rechargeable"},"place_on_part":"beside the keyboard port"},{"question":"coin-cell","given":{"is":"good"}},{"question":"leak-reach","given":{"is":"none"}},{"question":"electrolytics","given":{"is":"sound"}},{"question":"tantalums","given":{"is":"none"}},{"question":"rails","given":{"is":"clear"}},{"question":"power-plug","given":{"is":"two-plug"}},{"question":"voltage-jumpers","given":{"is":"right"}},{"question":"jumpers","given":{"is":"known"}},{"question":"board-faces","given":{"is":"sound"}},{"question":"joints","given":{"is":"sound"}},{"question":"parts-present","given":{"is":"all"}},{"question":"sockets","given":{"is":"sound"}},{"question":"socketed-chips","given":{"is":"home"}},{"question":"headers","given":{"is":"sound"}},{"question":"shells","given":{"is":"bright"}},{"question":"keyboard-port","given":{"is":"whole"}},{"question":"firmware","given":{"is":"saved"}},{"question":"dirt","given":{"is":"clean"}},{"question":"board-posts","given":{"is":"there"}}]');
INSERT INTO survey VALUES(X'01a216c615667613b4489296ad3e3381',X'01a216c61565721a98c06b153ffd047e','2026-09-27',12,'Ines Marlow','Before fitting',NULL,'','[{"question":"running","given":{"is":"seen"}},{"question":"clock-supply","given":{"is":"removed"}},{"question":"coin-cell","given":{"is":"good"}},{"question":"leak-reach","given":{"is":"none"}},{"question":"electrolytics","given":{"is":"sound"}},{"question":"tantalums","given":{"is":"none"}},{"question":"rails","given":{"is":"clear"}},{"question":"power-plug","given":{"is":"two-plug"}},{"question":"voltage-jumpers","given":{"is":"right"}},{"question":"jumpers","given":{"is":"known"}},{"question":"board-faces","given":{"is":"sound"}},{"question":"joints","given":{"is":"sound"}},{"question":"parts-present","given":{"is":"all"}},{"question":"sockets","given":{"is":"sound"}},{"question":"socketed-chips","given":{"is":"home"}},{"question":"headers","given":{"is":"sound"}},{"question":"shells","given":{"is":"bright"}},{"question":"keyboard-port","given":{"is":"whole"}},{"question":"firmware","given":{"is":"saved"}},{"question":"dirt","given":{"is":"clean"}},{"question":"board-posts","given":{"is":"there"}}]');
INSERT INTO survey VALUES(X'01a216c6164573e79d2472887feae469',X'01a216c61565721a98c06b36e1a5a538','2024-11-16',134,'Ines Marlow','On arrival',NULL,'','[{"question":"running","given":{"is":"untested"}},{"question":"clock-supply","given":{"is":"leaking"},"place_on_part":"beside the keyboard port"},{"question":"coin-cell","given":{"is":"good"}},{"question":"leak-reach","given":{"is":"far"},"place_on_part":"keyboard port and first slot"},{"question":"electrolytics","given":{"is":"sound"}},{"question":"tantalums","given":{"is":"none"}},{"question":"rails","given":{"is":"clear"}},{"question":"power-plug","given":{"is":"two-plug"}},{"question":"voltage-jumpers","given":{"is":"automatic"}},{"question":"jumpers","given":{"is":"known"}},{"question":"board-faces","given":{"is":"sound"}},{"question":"joints","given":{"is":"sound"}},{"question":"parts-present","given":{"is":"all"}},{"question":"sockets","given":{"is":"sound"}},{"question":"socketed-chips","given":{"is":"home"}},{"question":"headers","given":{"is":"sound"}},{"question":"shells","given":{"is":"bright"}},{"question":"keyboard-port","given":{"is":"whole"}},{"question":"firmware","given":{"is":"saved"}},{"question":"dirt","given":{"is":"clean"}},{"question":"board-posts","given":{"is":"there"}}]');
INSERT INTO survey VALUES(X'01a216c616467336bd5ca9248a79620c',X'01a216c61565721a98c06b36e1a5a538','2026-01-30',141,'Ines Marlow','Second look after cleaning',NULL,'','[{"question":"running","given":{"is":"untested"}},{"question":"clock-supply","given":{"is":"removed"}},{"question":"coin-cell","given":{"is":"good"}},{"question":"leak-reach","given":{"is":"tracks-gone"},"place_on_part":"between keyboard port and its controller"},{"question":"electrolytics","given":{"is":"sound"}},{"question":"tantalums","given":{"is":"none"}},{"question":"rails","given":{"is":"clear"}},{"question":"power-plug","given":{"is":"two-plug"}},{"question":"voltage-jumpers","given":{"is":"right"}},{"question":"jumpers","given":{"is":"known"}},{"question":"board-faces","given":{"is":"sound"}},{"question":"joints","given":{"is":"sound"}},{"question":"parts-present","given":{"is":"all"}},{"question":"sockets","given":{"is":"sound"}},{"question":"socketed-chips","given":{"is":"home"}},{"question":"headers","given":{"is":"sound"}},{"question":"shells","given":{"is":"bright"}},{"question":"keyboard-port","given":{"is":"whole"}},{"question":"firmware","given":{"is":"saved"}},{"question":"dirt","given":{"is":"clean"}},{"question":"board-posts","given":{"is":"there"}}]');
INSERT INTO survey VALUES(X'01a216c6165172e7afd95f63970f0936',X'01a216c61565721a98c06b37ad760c92','2025-06-04',147,'Ines Marlow','On arrival',NULL,'','[{"question":"running","given":{"is":"untested"}},{"question":"clock-supply","given":{"is":"removed"}},{"question":"coin-cell","given":{"is":"good"}},{"question":"leak-reach","given":{"is":"none"}},{"question":"electrolytics","given":{"is":"sound"}},{"question":"tantalums","given":{"is":"none"}},{"question":"rails","given":{"is":"clear"}},{"question":"power-plug","given":{"is":"two-plug"}},{"question":"voltage-jumpers","given":{"is":"automatic"}},{"question":"jumpers","given":{"is":"known"}},{"question":"board-faces","given":{"is":"sound"}},{"question":"joints","given":{"is":"sound"}},{"question":"parts-present","given":{"is":"all"}},{"question":"sockets","given":{"is":"sound"}},{"question":"socketed-chips","given":{"is":"home"}},{"question":"headers","given":{"is":"sound"}},{"question":"shells","given":{"is":"rusty"},"figure":4.0},{"question":"keyboard-port","given":{"is":"whole"}},{"question":"firmware","given":{"is":"saved"}},{"question":"dirt","given":{"is":"clean"}},{"question":"board-posts","given":{"is":"there"}}]');
INSERT INTO survey VALUES(X'01a216c616fd76498a564db85b84baf5',X'01a216c61565721a98c06b5b91a71d8e','2025-12-31',239,'Ines Marlow','On arrival',NULL,'','[{"question":"running","given":{"is":"faulty"}},{"question":"clock-supply","given":{"is":"coin"}},{"question":"coin-cell","given":{"is":"good"},"figure":3.0},{"question":"leak-reach","given":{"is":"none"}},{"question":"electrolytics","given":{"is":"sound"}},{"question":"tantalums","given":{"is":"none"}},{"question":"rails","given":{"is":"clear"}},{"question":"power-plug","given":{"is":"atx"}},{"question":"voltage-jumpers","given":{"is":"automatic"}},{"question":"jumpers","given":{"is":"known"}},{"question":"board-faces","given":{"is":"sound"}},{"question":"joints","given":{"is":"sound"}},{"question":"parts-present","given":{"is":"all"}},{"question":"sockets","given":{"is":"sound"}},{"question":"socketed-chips","given":{"is":"home"}},{"question":"headers","given":{"is":"sound"}},{"question":"shells","given":{"is":"bright"}},{"question":"keyboard-port","given":{"is":"whole"}},{"question":"firmware","given":{"is":"saved"}},{"question":"dirt","given":{"is":"clean"}},{"question":"board-posts","given":{"is":"there"}}]');
INSERT INTO survey VALUES(X'01a216c61755733b99484fa205b9d3e3',X'01a216c61565721a98c06b6ea61d6586','2026-05-10',316,'Ines Marlow','On arrival',NULL,'','[{"question":"running","given":{"is":"faulty"}},{"question":"clock-supply","given":{"is":"nothing"}},{"question":"leak-reach","given":{"is":"none"}},{"question":"electrolytics","given":{"is":"leaking"}},{"question":"tantalums","given":{"is":"none"}},{"question":"rails","given":{"is":"clear"}},{"question":"jumpers","given":{"is":"known"}},{"question":"board-faces","given":{"is":"sound"}},{"question":"joints","given":{"is":"sound"}},{"question":"parts-present","given":{"is":"all"}},{"question":"socketed-chips","given":{"is":"home"}},{"question":"headers","given":{"is":"sound"}},{"question":"shells","given":{"is":"bright"}},{"question":"dirt","given":{"is":"clean"}},{"question":"edge-contacts","given":{"is":"bright"}},{"question":"bracket","given":{"is":"right"}},{"question":"slot-key","given":{"is":"plain"}},{"question":"minus-five","given":{"is":"no"}},{"question":"jacks","given":{"is":"firm"}},{"question":"card-leads","given":{"is":"present"}},{"question":"driver","given":{"is":"kept"}}]');
CREATE TABLE finding (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  part BLOB NOT NULL REFERENCES part DEFERRABLE INITIALLY DEFERRED,
  what TEXT NOT NULL,
  place_on_part TEXT NOT NULL,
  source TEXT NOT NULL CHECK (source IN ('survey', 'capacitors', 'work', 'hand')),
  question TEXT NOT NULL,
  note TEXT NOT NULL
) STRICT, WITHOUT ROWID;
INSERT INTO finding VALUES(X'01a216c615667613b448929177a727ec',X'01a216c61565721a98c06b153ffd047e','cell-present','beside the keyboard port','survey','clock-supply','');
INSERT INTO finding VALUES(X'01a216c615667613b44892973a881a14',X'01a216c61565721a98c06b153ffd047e','clock-unfed','','survey','clock-supply','');
INSERT INTO finding VALUES(X'01a216c6164573e79d247289163043d1',X'01a216c61565721a98c06b36e1a5a538','cell-leaked','beside the keyboard port','survey','clock-supply','');
INSERT INTO finding VALUES(X'01a216c6164573e79d24728b9f7a391e',X'01a216c61565721a98c06b36e1a5a538','leak-residue','keyboard port and first slot','survey','leak-reach','');
INSERT INTO finding VALUES(X'01a216c616467336bd5ca9259474a6ff',X'01a216c61565721a98c06b36e1a5a538','clock-unfed','','survey','clock-supply','');
INSERT INTO finding VALUES(X'01a216c616467336bd5ca927e55b71ce',X'01a216c61565721a98c06b36e1a5a538','tracks-eaten','between keyboard port and its controller','survey','leak-reach','');
INSERT INTO finding VALUES(X'01a216c6165172e7afd95f644eea3328',X'01a216c61565721a98c06b37ad760c92','clock-unfed','','survey','clock-supply','');
INSERT INTO finding VALUES(X'01a216c6165172e7afd95f66f4db402d',X'01a216c61565721a98c06b37ad760c92','shells-rusted','','survey','shells','');
INSERT INTO finding VALUES(X'01a216c616fd76498a564db936a4f2b9',X'01a216c61565721a98c06b5b91a71d8e','works-badly','','survey','running','');
INSERT INTO finding VALUES(X'01a216c616fd76498a564dbfb3be285a',X'01a216c61565721a98c06b5b91a71d8e','capacitors-bulged','C1, C2, C3','capacitors','','');
INSERT INTO finding VALUES(X'01a216c61755733b99484fa3af69b9e4',X'01a216c61565721a98c06b6ea61d6586','works-badly','','survey','running','');
INSERT INTO finding VALUES(X'01a216c61755733b99484fa5c2c91e90',X'01a216c61565721a98c06b6ea61d6586','capacitors-leaking','','survey','electrolytics','');
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
, touches TEXT NOT NULL DEFAULT 'unstated'
  CHECK (touches IN ('unstated', 'electrical', 'nothing_electrical'))) STRICT, WITHOUT ROWID;
INSERT INTO work VALUES(X'01a216c615667613b4489293207c5f00',X'01a216c61565721a98c06b153ffd047e',X'01a216c615667613b448929177a727ec','photograph','','power','care','done','2024-12-27',9,'Ines Marlow',10,'','',NULL,'','unstated');
INSERT INTO work VALUES(X'01a216c615667613b4489294349610c7',X'01a216c61565721a98c06b153ffd047e',X'01a216c615667613b448929177a727ec','cut-cell','','storage','repair','done','2024-12-27',10,'Ines Marlow',8,'','',NULL,'Cell bagged, polarity marked on the bag.','unstated');
INSERT INTO work VALUES(X'01a216c6164573e79d24728d64d0f83f',X'01a216c61565721a98c06b36e1a5a538',X'01a216c6164573e79d247289163043d1','photograph','','power','care','done','2024-11-18',137,'Ines Marlow',12,'','',NULL,'','unstated');
INSERT INTO work VALUES(X'01a216c616467336bd5ca9219b3f5782',X'01a216c61565721a98c06b36e1a5a538',X'01a216c6164573e79d247289163043d1','cut-leaking-cell','','storage','repair','done','2024-11-18',138,'Ines Marlow',6,'','',NULL,'','unstated');
INSERT INTO work VALUES(X'01a216c616467336bd5ca922dd18f378',X'01a216c61565721a98c06b36e1a5a538',X'01a216c6164573e79d247289163043d1','neutralise','','storage','care','done','2024-11-19',139,'Ines Marlow',35,'White vinegar, swabs','',NULL,'','unstated');
INSERT INTO work VALUES(X'01a216c616467336bd5ca923fbfa59b0',X'01a216c61565721a98c06b36e1a5a538',X'01a216c6164573e79d247289163043d1','rinse-and-dry','','storage','care','done','2024-11-20',140,'Ines Marlow',15,'Deionised water, alcohol','',NULL,'','unstated');
INSERT INTO work VALUES(X'01a216c616467336bd5ca92949e80b50',X'01a216c61565721a98c06b36e1a5a538',X'01a216c616467336bd5ca927e55b71ce','mend-eaten-tracks','','power','repair','doing','2026-11-06',144,'Teodor Lask',90,'Bridging wire','',NULL,'Five of seven tracks bridged.','unstated');
INSERT INTO work VALUES(X'01a216c6165172e7afd95f68682380a5',X'01a216c61565721a98c06b37ad760c92',NULL,'','Start it on the bench and compare with 0034','ready','care','open','2026-10-27',150,'Ines Marlow',NULL,'','',NULL,'','unstated');
INSERT INTO work VALUES(X'01a216c616c974028db1519b192cad68',X'01a216c61565721a98c06b4f131d95da',NULL,'','Find posts and heavy-cooler support for the slot','fitting','repair','waiting','2026-07-19',209,'Ines Marlow',NULL,'','',NULL,'Asked at two swap meets.','unstated');
INSERT INTO work VALUES(X'01a216c616fe7769954590acb7fca519',X'01a216c61565721a98c06b5b91a71d8e',X'01a216c616fd76498a564dbfb3be285a','photograph','','power','care','done','2026-09-29',254,'Ines Marlow',10,'','',NULL,'','unstated');
INSERT INTO work VALUES(X'01a216c616fe7769954590ad41950eb4',X'01a216c61565721a98c06b5b91a71d8e',X'01a216c616fd76498a564dbfb3be285a','recap','','power','rework','doing','2026-11-14',255,'Ines Marlow',80,'3 × 1000 µF 6.3 V, low ESR, 8 mm','',NULL,'C1 to C3 done. C4 to C6 wait for better light.','unstated');
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
, who TEXT NOT NULL DEFAULT '') STRICT, WITHOUT ROWID;
INSERT INTO look VALUES(X'01a216c615667613b4489292273b36db',X'01a216c615667613b448929177a727ec','2024-12-26',8,'open','plain',NULL,'','',X'01a216c615667613b44892905ff124d3',NULL,'');
INSERT INTO look VALUES(X'01a216c615667613b44892959fa05d98',X'01a216c615667613b448929177a727ec','2024-12-27',11,'cured','plain',NULL,'','',NULL,X'01a216c615667613b4489294349610c7','');
INSERT INTO look VALUES(X'01a216c615667613b4489298120454de',X'01a216c615667613b44892973a881a14','2026-09-27',13,'open','slight',NULL,'','',X'01a216c615667613b4489296ad3e3381',NULL,'');
INSERT INTO look VALUES(X'01a216c6164573e79d24728a345e7c94',X'01a216c6164573e79d247289163043d1','2024-11-16',135,'open','grave',NULL,'','',X'01a216c6164573e79d2472887feae469',NULL,'');
INSERT INTO look VALUES(X'01a216c6164573e79d24728c0275bc3c',X'01a216c6164573e79d24728b9f7a391e','2024-11-16',136,'open','grave',NULL,'','',X'01a216c6164573e79d2472887feae469',NULL,'');
INSERT INTO look VALUES(X'01a216c616467336bd5ca926c620b016',X'01a216c616467336bd5ca9259474a6ff','2026-01-30',142,'open','slight',NULL,'','',X'01a216c616467336bd5ca9248a79620c',NULL,'');
INSERT INTO look VALUES(X'01a216c616467336bd5ca92844cf6ff2',X'01a216c616467336bd5ca927e55b71ce','2026-01-30',143,'open','grave',NULL,'','',X'01a216c616467336bd5ca9248a79620c',NULL,'');
INSERT INTO look VALUES(X'01a216c6165172e7afd95f655338e5f5',X'01a216c6165172e7afd95f644eea3328','2025-06-04',148,'open','slight',NULL,'','',X'01a216c6165172e7afd95f63970f0936',NULL,'');
INSERT INTO look VALUES(X'01a216c6165172e7afd95f675bf1961f',X'01a216c6165172e7afd95f66f4db402d','2025-06-04',149,'open','slight',4.0,'','',X'01a216c6165172e7afd95f63970f0936',NULL,'');
INSERT INTO look VALUES(X'01a216c616fd76498a564dbaa5a8f239',X'01a216c616fd76498a564db936a4f2b9','2025-12-31',240,'open','plain',NULL,'','',X'01a216c616fd76498a564db85b84baf5',NULL,'');
INSERT INTO look VALUES(X'01a216c616fd76498a564dc023ae2ac2',X'01a216c616fd76498a564dbfb3be285a','2026-09-29',245,'open','plain',NULL,'','',NULL,NULL,'');
INSERT INTO look VALUES(X'01a216c61755733b99484fa4da3fa15b',X'01a216c61755733b99484fa3af69b9e4','2026-05-10',317,'open','plain',NULL,'','',X'01a216c61755733b99484fa205b9d3e3',NULL,'');
INSERT INTO look VALUES(X'01a216c61755733b99484fa62805fd46',X'01a216c61755733b99484fa5c2c91e90','2026-05-10',318,'open','plain',NULL,'','',X'01a216c61755733b99484fa205b9d3e3',NULL,'');
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
, function TEXT CHECK (function IN (
    'processor_supply', 'rail_smoothing', 'supply_output', 'mains_reservoir', 'mains_suppression', 'coupling', 'timing',
    'other')), low_esr INTEGER CHECK (low_esr IN (0, 1))) STRICT, WITHOUT ROWID;
INSERT INTO capacitor VALUES(X'01a216c616fd76498a564dbc29eda0e3',X'01a216c61565721a98c06b5b91a71d8e','C1','left of the processor',1000.0,6.2999999999999998223,105.0,8.0,16.0,NULL,'wet_aluminium','radial','ZQ','stripe towards the socket','2026-09-29',242,'bulged','processor_supply',NULL);
INSERT INTO capacitor VALUES(X'01a216c616fd76498a564dbd2a9df6c8',X'01a216c61565721a98c06b5b91a71d8e','C2','left of the processor',1000.0,6.2999999999999998223,105.0,8.0,16.0,NULL,'wet_aluminium','radial','ZQ','stripe towards the socket','2026-09-29',243,'bulged','processor_supply',NULL);
INSERT INTO capacitor VALUES(X'01a216c616fd76498a564dbe1d04a8b7',X'01a216c61565721a98c06b5b91a71d8e','C3','left of the processor',1000.0,6.2999999999999998223,105.0,8.0,16.0,NULL,'wet_aluminium','radial','ZQ','stripe towards the socket','2026-09-29',244,'bulged','processor_supply',NULL);
INSERT INTO capacitor VALUES(X'01a216c616fd76498a564dc188cb2eba',X'01a216c61565721a98c06b5b91a71d8e','C4','left of the processor, lower down',1000.0,6.2999999999999998223,105.0,8.0,16.0,NULL,'wet_aluminium','radial','ZQ','stripe towards the socket','2026-09-29',246,'bulged','processor_supply',NULL);
INSERT INTO capacitor VALUES(X'01a216c616fd76498a564dc28ca53b9f',X'01a216c61565721a98c06b5b91a71d8e','C5','left of the processor, lower down',1000.0,6.2999999999999998223,105.0,8.0,16.0,NULL,'wet_aluminium','radial','ZQ','stripe towards the socket','2026-09-29',247,'bulged','processor_supply',NULL);
INSERT INTO capacitor VALUES(X'01a216c616fd76498a564dc3cfa25a67',X'01a216c61565721a98c06b5b91a71d8e','C6','left of the processor, lower down',1000.0,6.2999999999999998223,105.0,8.0,16.0,NULL,'wet_aluminium','radial','ZQ','stripe towards the socket','2026-09-29',248,'bulged','processor_supply',NULL);
INSERT INTO capacitor VALUES(X'01a216c616fd76498a564dc4819a82d6',X'01a216c61565721a98c06b5b91a71d8e','C11','by the memory sockets',470.0,16.0,105.0,8.0,12.0,NULL,'wet_aluminium','radial','ZQ','','2026-09-29',249,'sound',NULL,NULL);
INSERT INTO capacitor VALUES(X'01a216c616fd76498a564dc557f90924',X'01a216c61565721a98c06b5b91a71d8e','C12','by the memory sockets',470.0,16.0,105.0,8.0,12.0,NULL,'wet_aluminium','radial','ZQ','','2026-09-29',250,'sound',NULL,NULL);
INSERT INTO capacitor VALUES(X'01a216c616fd76498a564dc6494e1ee6',X'01a216c61565721a98c06b5b91a71d8e','C13','by the memory sockets',470.0,16.0,105.0,8.0,12.0,NULL,'wet_aluminium','radial','ZQ','','2026-09-29',251,'sound',NULL,NULL);
INSERT INTO capacitor VALUES(X'01a216c616fd76498a564dc706c3accb',X'01a216c61565721a98c06b5b91a71d8e','C14','by the memory sockets',470.0,16.0,105.0,8.0,12.0,NULL,'wet_aluminium','radial','ZQ','','2026-09-29',252,'sound',NULL,NULL);
INSERT INTO capacitor VALUES(X'01a216c616fd76498a564dc8132fa873',X'01a216c61565721a98c06b5b91a71d8e','C20','under the heatsink clip',100.0,16.0,105.0,6.2999999999999998223,11.0,NULL,'wet_aluminium','radial','','','2026-09-29',253,'not_looked',NULL,NULL);
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
INSERT INTO capacitor_look VALUES(X'01a216c616fe7769954590ae26457d36',X'01a216c616fd76498a564dbc29eda0e3','2026-11-14',256,'sound',985.0,22.0,NULL,'1000 µF 6.3 V, low ESR, 8 mm','');
INSERT INTO capacitor_look VALUES(X'01a216c616fe7769954590afcfe29dc4',X'01a216c616fd76498a564dbd2a9df6c8','2026-11-14',257,'sound',985.0,22.0,NULL,'1000 µF 6.3 V, low ESR, 8 mm','');
INSERT INTO capacitor_look VALUES(X'01a216c616fe7769954590b09b203dde',X'01a216c616fd76498a564dbe1d04a8b7','2026-11-14',258,'sound',985.0,22.0,NULL,'1000 µF 6.3 V, low ESR, 8 mm','');
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
  note TEXT NOT NULL, proof BLOB REFERENCES proof DEFERRABLE INITIALLY DEFERRED, work BLOB REFERENCES work DEFERRABLE INITIALLY DEFERRED,
  CHECK ((part IS NOT NULL) + (machine IS NOT NULL) = 1)
) STRICT, WITHOUT ROWID;
INSERT INTO reading VALUES(X'01a216c615bd70cbb9e642e2bdb515a6',X'01a216c61565721a98c06b1e807dd967',NULL,'2025-04-15',41,'+5 V under load',5.1299999999999998934,'V','8 A','Ines Marlow',NULL,'',NULL,NULL);
INSERT INTO reading VALUES(X'01a216c615bd70cbb9e642e3ec2f0315',X'01a216c61565721a98c06b1e807dd967',NULL,'2025-04-15',42,'Ripple on +5 V',17.0,'mV','8 A','Ines Marlow',NULL,'',NULL,NULL);
INSERT INTO reading VALUES(X'01a216c615bd70cbb9e642e4c71b7d0a',X'01a216c61565721a98c06b1e807dd967',NULL,'2025-12-21',43,'+5 V under load',5.1100000000000003197,'V','8 A','Ines Marlow',NULL,'',NULL,NULL);
INSERT INTO reading VALUES(X'01a216c615bd70cbb9e642e572606234',X'01a216c61565721a98c06b1e807dd967',NULL,'2026-07-29',44,'+5 V under load',5.080000000000000071,'V','8 A','Ines Marlow',NULL,'',NULL,NULL);
INSERT INTO reading VALUES(X'01a216c615bd70cbb9e642e6affee841',X'01a216c61565721a98c06b1e807dd967',NULL,'2026-07-29',45,'+12 V under load',11.820000000000000284,'V','3 A','Ines Marlow',NULL,'',NULL,NULL);
INSERT INTO reading VALUES(X'01a216c615bd70cbb9e642e77eff43ec',X'01a216c61565721a98c06b1e807dd967',NULL,'2026-07-29',46,'Ripple on +5 V',22.0,'mV','8 A','Ines Marlow',NULL,'',NULL,NULL);
INSERT INTO reading VALUES(X'01a216c617cd741c848f9ec0be317cc4',NULL,X'01a216c617cd741c848f9ea8a85605b9','2026-10-13',385,'+5 V rail at the board',5.0599999999999996092,'V','Started, idle','Ines Marlow',NULL,'',NULL,NULL);
INSERT INTO reading VALUES(X'01a216c617cd741c848f9ec19bdb55ec',NULL,X'01a216c617cd741c848f9ea8a85605b9','2026-10-13',386,'+12 V rail at the disk',11.900000000000000355,'V','Disk spinning','Ines Marlow',NULL,'',NULL,NULL);
CREATE TABLE setting (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  part BLOB NOT NULL REFERENCES part DEFERRABLE INITIALLY DEFERRED,
  found_on TEXT NOT NULL CHECK (found_on = '' OR found_on BETWEEN '1900' AND '2199-12-31'),
  found_sequence INTEGER NOT NULL CHECK (found_sequence >= 1),
  name TEXT NOT NULL,
  value TEXT NOT NULL,
  source TEXT NOT NULL
) STRICT, WITHOUT ROWID;
INSERT INTO setting VALUES(X'01a216c615667613b448928dd3116378',X'01a216c61565721a98c06b153ffd047e','2024-12-26',4,'JP1','closed','print on the board');
INSERT INTO setting VALUES(X'01a216c615667613b448928ef031bb21',X'01a216c61565721a98c06b153ffd047e','2024-12-26',5,'JP4','2-3','manual');
INSERT INTO setting VALUES(X'01a216c615667613b448928fb1bf386c',X'01a216c61565721a98c06b153ffd047e','2024-12-26',6,'Firmware version','2.11','start-up message');
INSERT INTO setting VALUES(X'01a216c615d5771f90e84cd9c59fd81b',X'01a216c61565721a98c06b21eaae18fc','2025-07-14',55,'JP11-JP14','33 MHz','manual');
INSERT INTO setting VALUES(X'01a216c615d5771f90e84cdac5c146ee',X'01a216c61565721a98c06b21eaae18fc','2025-07-14',56,'JP20','5 V','manual');
INSERT INTO setting VALUES(X'01a216c6160176d792712b5908610df1',X'01a216c61565721a98c06b2bd7b34964','2025-12-31',84,'JP3','33 MHz','manual');
INSERT INTO setting VALUES(X'01a216c6160176d792712b5a69d70f4e',X'01a216c61565721a98c06b2bd7b34964','2025-12-31',85,'JP8','1-2, 5 V','manual');
INSERT INTO setting VALUES(X'01a216c6169973aeb546fb90134ebe97',X'01a216c61565721a98c06b460edb198b','2026-10-22',190,'Address','220','manual');
INSERT INTO setting VALUES(X'01a216c6169973aeb546fb9133db3b68',X'01a216c61565721a98c06b460edb198b','2026-10-22',191,'Interrupt','5','manual');
INSERT INTO setting VALUES(X'01a216c616fd76498a564db7edcd0a35',X'01a216c61565721a98c06b5b91a71d8e','2025-12-31',238,'Bus clock','133 MHz','setup');
INSERT INTO setting VALUES(X'01a216c61755733b99484fa1641df926',X'01a216c61565721a98c06b6ea61d6586','2026-05-10',315,'Address','220','print on the board');
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
INSERT INTO proof VALUES(X'01a216c615667613b44892995613f9e8',X'01a216c61565721a98c06b153ffd047e',NULL,'boot','2026-10-07',14,'Bench: proven supply, known-good processor, memory set and video card, test card',15,'Starts to a picture with no beep code; supply voltages right; no part hot.','passed','Ines Marlow','');
INSERT INTO proof VALUES(X'01a216c6158572999d48f7ad06628756',X'01a216c61565721a98c06b196494c08c',NULL,'memory-test','2026-10-05',22,'Proven board, cache switched off',480,'Full passes overnight with no error at all; one error fails it.','passed','Ines Marlow','');
INSERT INTO proof VALUES(X'01a216c6158a76cbb3cf6c7c3271084f',X'01a216c61565721a98c06b1abacab539',NULL,'picture','2026-10-07',26,'Proven board and screen',60,'Text, every graphics mode of its time and 3D where it has it; no speck, no stripe; fan turns; one hour.','passed','Ines Marlow','');
INSERT INTO proof VALUES(X'01a216c615bd70cbb9e642e86d9289c0',X'01a216c61565721a98c06b1e807dd967',NULL,'load-test','2026-07-29',47,'Dummy load, or resistors and a scrap drive; meter and oscilloscope; nothing else connected',60,'Under load +3.3, +5, +12 V and standby within 5 %, -5 and -12 V within 10 %; ripple at most 50 mV on 3.3 V, 5 V and standby, 120 mV on +12 and -12 V, 100 mV on -5 V. One hour at half load: no smell, warm but not hot. Sitting at the very edge is no pass.','passed','Ines Marlow','');
INSERT INTO proof VALUES(X'01a216c615d5771f90e84cdc065a794c',X'01a216c61565721a98c06b21eaae18fc',NULL,'boot','2026-08-23',58,'Bench: proven supply, known-good processor, memory set and video card, test card',15,'Starts to a picture with no beep code; supply voltages right; no part hot.','passed','Ines Marlow','');
INSERT INTO proof VALUES(X'01a216c6160176d792712b5cf189d543',X'01a216c61565721a98c06b2bd7b34964',NULL,'boot','2026-04-30',87,'Bench: proven supply, known-good processor, memory set and video card, test card',15,'Starts to a picture with no beep code; supply voltages right; no part hot.','passed','Ines Marlow','');
INSERT INTO proof VALUES(X'01a216c616cd7013b5d309823e557981',X'01a216c61565721a98c06b50a358ebf0',NULL,'memory-test','2026-10-29',212,'Proven board, cache switched off',480,'Full passes overnight with no error at all; one error fails it.','passed','Ines Marlow','');
INSERT INTO proof VALUES(X'01a216c616eb75b394cf7103008d023a',X'01a216c61565721a98c06b58f941d1fd',NULL,'load-test','2026-10-28',231,'Dummy load, or resistors and a scrap drive; meter and oscilloscope; nothing else connected',60,'Under load +3.3, +5, +12 V and standby within 5 %, -5 and -12 V within 10 %; ripple at most 50 mV on 3.3 V, 5 V and standby, 120 mV on +12 and -12 V, 100 mV on -5 V. One hour at half load: no smell, warm but not hot. Sitting at the very edge is no pass.','passed','Ines Marlow','');
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
INSERT INTO fault_case VALUES(X'01a216c617bd7045804ce442ab2a5db2',X'01a216c61565721a98c06b6ea61d6586',NULL,'2026-05-30',369,'Left channel silent, hum on the right','open','');
INSERT INTO fault_case VALUES(X'01a216c617f070cc8c93ec5d4faffc96',NULL,X'01a216c617f070cc8c93ec48860cbb5d','2026-09-27',464,'Hangs after a quarter of an hour, sooner when warm','found','Six capacitors round the processor are domed.');
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
, codes TEXT NOT NULL DEFAULT '') STRICT, WITHOUT ROWID;
INSERT INTO trial VALUES(X'01a216c617bd7045804ce4438579a0a9',X'01a216c617bd7045804ce442ab2a5db2','2026-05-30',370,'Bench board 0023, supply 0031','Swapped the card for 0050',X'01a216c61565721a98c06b6ea61d6586',X'01a216c61565721a98c06b460edb198b','symptom_gone','','');
INSERT INTO trial VALUES(X'01a216c617bd7045804ce444392eadc3',X'01a216c617bd7045804ce442ab2a5db2','2026-06-01',371,'The same','Pressed on the coupling capacitors',NULL,NULL,'symptom_changed','','');
INSERT INTO trial VALUES(X'01a216c617f070cc8c93ec5e08d51ea5',X'01a216c617f070cc8c93ec5d4faffc96','2026-09-27',465,'Board, processor, one memory module, video; known-good supply','Swapped the memory for the known-good module',X'01a216c61565721a98c06b5e8efdf77f',X'01a216c61565721a98c06b50a358ebf0','symptom_stays','','');
INSERT INTO trial VALUES(X'01a216c617f070cc8c93ec5f7fc53830',X'01a216c617f070cc8c93ec5d4faffc96','2026-09-27',466,'The same, with the known-good module','Swapped the supply',X'01a216c61565721a98c06b62c4ad9e9c',X'01a216c61565721a98c06b58f941d1fd','symptom_stays','','');
INSERT INTO trial VALUES(X'01a216c617f070cc8c93ec6023be2ae0',X'01a216c617f070cc8c93ec5d4faffc96','2026-09-29',467,'The same, heatsink off, board under the lamp','Looked along the tops of the capacitors',NULL,NULL,'undecided','','');
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
INSERT INTO custody_event VALUES(X'01a216c6179573999180e8ef2c8861ad',X'01a216c615667613b44892808f06a4da','2026-08-08',353,'borrowed','Museum at Tolver Mill','2027-09-22',NULL,'Clean, a scratch on the left side.','');
INSERT INTO custody_event VALUES(X'01a216c6179970278e23b3a322a6efcc',X'01a216c615667613b44892814466601f','2026-09-17',358,'lent','Mira Oyelaran','2026-11-16',NULL,'Good; cable and foot with it.','');
INSERT INTO custody_event VALUES(X'01a216c617b9704f924c2ac7b7d00bbe',X'01a216c615667613b44892890bdcc2e3','2026-03-21',368,'sold','T. Brannick','',2500,'Tested under load, label on it.','');
CREATE TABLE valuation (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  part BLOB NOT NULL REFERENCES part DEFERRABLE INITIALLY DEFERRED,
  "on" TEXT NOT NULL CHECK ("on" = '' OR "on" BETWEEN '1900' AND '2199-12-31'),
  amount_cents INTEGER NOT NULL,
  basis TEXT NOT NULL
) STRICT, WITHOUT ROWID;
INSERT INTO valuation VALUES(X'01a216c615d5771f90e84cddb3dbc025',X'01a216c61565721a98c06b21eaae18fc','2026-09-27',9000,'Two sales of the same design this year');
INSERT INTO valuation VALUES(X'01a216c61755733b99484fa7c13ed67a',X'01a216c61565721a98c06b6ea61d6586','2026-05-20',6000,'Insurer''s list');
INSERT INTO valuation VALUES(X'01a216c61755733b99484fa83613aebe',X'01a216c61565721a98c06b6ea61d6586','2026-10-27',8500,'Three sales this year');
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
  caption TEXT NOT NULL, is_map INTEGER NOT NULL DEFAULT 0 CHECK (is_map IN (0, 1)),
  CHECK ((part IS NOT NULL) + (machine IS NOT NULL) + (lot IS NOT NULL) = 1)
) STRICT, WITHOUT ROWID;
INSERT INTO photo VALUES(X'01a216c615667613b448929a687e6adc',X'01a216c61565721a98c06b153ffd047e',NULL,NULL,'b8e50faf7f5d746a910d099f3a2bd9952c30f3356fe61ff79ceffc40fcc6cee9','jpg',800,600,'2024-12-26',471,'2024-12-26','overview','As it came',0);
INSERT INTO photo VALUES(X'01a216c6158572999d48f7aef35e3271',X'01a216c61565721a98c06b196494c08c',NULL,NULL,'a330f18ff47f48e46293271446988b6ebcc3d5f311de374c2f2512e709ce14d4','jpg',800,600,'2025-04-05',475,'2025-04-05','overview','As it came',0);
INSERT INTO photo VALUES(X'01a216c6158a76cbb3cf6c7d170cae01',X'01a216c61565721a98c06b1abacab539',NULL,NULL,'3be80863289b8d799aaa8e43183cc5ade5bbf71f6d314073ff790fb0b0d321e0','jpg',800,600,'2025-04-05',476,'2025-04-05','overview','As it came',0);
INSERT INTO photo VALUES(X'01a216c615bd70cbb9e642e99d81b351',X'01a216c61565721a98c06b1e807dd967',NULL,NULL,'74cda5b6b2651daa3e3d70ba9590a930da5f6eb778d1fe442c97a3e38b894edb','jpg',800,600,'2025-04-05',480,'2025-04-05','overview','As it came',0);
INSERT INTO photo VALUES(X'01a216c615d5771f90e84cde047784ef',X'01a216c61565721a98c06b21eaae18fc',NULL,NULL,'93433c347404c1264f0b84401c7a4707e931f41bdca02e8ee40f92781e71db71','jpg',800,600,'2025-07-14',483,'2025-07-14','overview','As it came',0);
INSERT INTO photo VALUES(X'01a216c616467336bd5ca92a437f39c8',X'01a216c61565721a98c06b36e1a5a538',NULL,NULL,'139c4360a13b41b245e8e06f80471edcf27b755cdcc4f9ba92e7d973fd37a871','jpg',800,600,'2024-11-16',503,'2024-11-16','overview','As it came',0);
INSERT INTO photo VALUES(X'01a216c616fe7769954590b1899f9ec6',X'01a216c61565721a98c06b5b91a71d8e',NULL,NULL,'2dc5034ad9176451132637e7e25760af4e30109ba0fa65395c65087cc9f126e0','jpg',800,600,'2025-12-31',538,'2025-12-31','overview','As it came',1);
CREATE TABLE photo_mark (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  photo BLOB NOT NULL REFERENCES photo DEFERRABLE INITIALLY DEFERRED,
  points TEXT NOT NULL CHECK (json_valid(points)),
  finding BLOB REFERENCES finding DEFERRABLE INITIALLY DEFERRED,
  capacitor BLOB REFERENCES capacitor DEFERRABLE INITIALLY DEFERRED,
  marking BLOB REFERENCES marking DEFERRABLE INITIALLY DEFERRED,
  work BLOB REFERENCES work DEFERRABLE INITIALLY DEFERRED,
  note TEXT NOT NULL
, role TEXT NOT NULL DEFAULT 'place' CHECK (
  role IN ('place', 'surface', 'damage', 'length', 'scale', 'rectangle', 'sample', 'reference', 'hidden')), length_mm REAL CHECK (length_mm > 0), breadth_mm REAL CHECK (breadth_mm > 0), red REAL CHECK (red BETWEEN 0 AND 1), green REAL CHECK (green BETWEEN 0 AND 1), blue REAL CHECK (blue BETWEEN 0 AND 1), clipped_percent REAL CHECK (clipped_percent BETWEEN 0 AND 100), proof BLOB REFERENCES proof DEFERRABLE INITIALLY DEFERRED) STRICT, WITHOUT ROWID;
INSERT INTO photo_mark VALUES(X'01a216c615667613b448929b371c52c7',X'01a216c615667613b448929a687e6adc','[[0.8,0.18]]',X'01a216c615667613b448929177a727ec',NULL,NULL,NULL,'','place',NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO photo_mark VALUES(X'01a216c616467336bd5ca92be7c3d027',X'01a216c616467336bd5ca92a437f39c8','[[0.8,0.19]]',X'01a216c6164573e79d247289163043d1',NULL,NULL,NULL,'','place',NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO photo_mark VALUES(X'01a216c616467336bd5ca92c1d57bb35',X'01a216c616467336bd5ca92a437f39c8','[[0.74,0.12]]',X'01a216c6164573e79d24728b9f7a391e',NULL,NULL,NULL,'','place',NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO photo_mark VALUES(X'01a216c616fe7769954590b2b157bfe8',X'01a216c616fe7769954590b1899f9ec6','[[0.5,0.44]]',X'01a216c616fd76498a564dbfb3be285a',NULL,NULL,NULL,'','place',NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO photo_mark VALUES(X'01a216c616fe7769954590b317f58c94',X'01a216c616fe7769954590b1899f9ec6','[[0.532,0.389]]',NULL,X'01a216c616fd76498a564dbc29eda0e3',NULL,NULL,'','place',NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO photo_mark VALUES(X'01a216c616fe7769954590b470c92b37',X'01a216c616fe7769954590b1899f9ec6','[[0.532,0.44]]',NULL,X'01a216c616fd76498a564dbd2a9df6c8',NULL,NULL,'','place',NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO photo_mark VALUES(X'01a216c616fe7769954590b5d1caa532',X'01a216c616fe7769954590b1899f9ec6','[[0.532,0.49]]',NULL,X'01a216c616fd76498a564dbe1d04a8b7',NULL,NULL,'','place',NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO photo_mark VALUES(X'01a216c616fe7769954590b6bf98dde4',X'01a216c616fe7769954590b1899f9ec6','[[0.532,0.54]]',NULL,X'01a216c616fd76498a564dc188cb2eba',NULL,NULL,'','place',NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO photo_mark VALUES(X'01a216c616fe7769954590b76d905c6c',X'01a216c616fe7769954590b1899f9ec6','[[0.532,0.591]]',NULL,X'01a216c616fd76498a564dc28ca53b9f',NULL,NULL,'','place',NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO photo_mark VALUES(X'01a216c616fe7769954590b8a8c89053',X'01a216c616fe7769954590b1899f9ec6','[[0.532,0.641]]',NULL,X'01a216c616fd76498a564dc3cfa25a67',NULL,NULL,'','place',NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO photo_mark VALUES(X'01a216c616fe7769954590b900176b77',X'01a216c616fe7769954590b1899f9ec6','[[0.789,0.44]]',NULL,X'01a216c616fd76498a564dc4819a82d6',NULL,NULL,'','place',NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO photo_mark VALUES(X'01a216c616fe7769954590ba6cf4a5ac',X'01a216c616fe7769954590b1899f9ec6','[[0.789,0.49]]',NULL,X'01a216c616fd76498a564dc557f90924',NULL,NULL,'','place',NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO photo_mark VALUES(X'01a216c616fe7769954590bb4e9f4de4',X'01a216c616fe7769954590b1899f9ec6','[[0.789,0.54]]',NULL,X'01a216c616fd76498a564dc6494e1ee6',NULL,NULL,'','place',NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO photo_mark VALUES(X'01a216c616fe7769954590bc98871b0f',X'01a216c616fe7769954590b1899f9ec6','[[0.789,0.591]]',NULL,X'01a216c616fd76498a564dc706c3accb',NULL,NULL,'','place',NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO photo_mark VALUES(X'01a216c616fe7769954590bd5854f9cd',X'01a216c616fe7769954590b1899f9ec6','[[0.355,0.39]]',NULL,NULL,X'01a216c616fd76498a564db4036b2065',NULL,'','place',NULL,NULL,NULL,NULL,NULL,NULL,NULL);
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
  note TEXT NOT NULL, proof BLOB REFERENCES proof DEFERRABLE INITIALLY DEFERRED,
  CHECK ((part IS NOT NULL) + (machine IS NOT NULL) + (lot IS NOT NULL) = 1)
) STRICT, WITHOUT ROWID;
INSERT INTO attachment VALUES(X'01a216c615667613b448929c1b9179d2',X'01a216c61565721a98c06b153ffd047e',NULL,NULL,'firmware_image','962e6d7ca8dcf3fdfb665d2a66f54ced300e420cc2364c21309f83bc319bf896','a286-odd.bin',34,'2024-12-26',578,'Two chips: this is the odd one.',NULL);
INSERT INTO attachment VALUES(X'01a216c6158a76cbb3cf6c7e866096e1',X'01a216c61565721a98c06b1abacab539',NULL,NULL,'firmware_image','925114abc093d81c699cf503610067878fdccfa97dd8a8eeeda0526140df26d3','oriel8.bin',23,'2025-04-05',579,'',NULL);
INSERT INTO attachment VALUES(X'01a216c6160176d792712b5eb751bcab',X'01a216c61565721a98c06b2bd7b34964',NULL,NULL,'firmware_image','925114abc093d81c699cf503610067878fdccfa97dd8a8eeeda0526140df26d3','a486vl.bin',23,'2025-12-31',580,'',NULL);
INSERT INTO attachment VALUES(X'01a216c616fe7769954590bf9a8063a9',X'01a216c61565721a98c06b5b91a71d8e',NULL,NULL,'firmware_image','925114abc093d81c699cf503610067878fdccfa97dd8a8eeeda0526140df26d3','w370t.bin',23,'2025-12-31',583,'',NULL);
CREATE TABLE work_after (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  part BLOB NOT NULL REFERENCES part DEFERRABLE INITIALLY DEFERRED,
  work BLOB NOT NULL REFERENCES work DEFERRABLE INITIALLY DEFERRED,
  "after" BLOB NOT NULL REFERENCES work DEFERRABLE INITIALLY DEFERRED
) STRICT, WITHOUT ROWID;
INSERT INTO work_after VALUES(X'01a216c617c076dfa7ed989db4e12130',X'01a216c61565721a98c06b37ad760c92',X'01a216c6165172e7afd95f68682380a5',X'01a216c616467336bd5ca92949e80b50');
CREATE TABLE material_use (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  part BLOB NOT NULL REFERENCES part DEFERRABLE INITIALLY DEFERRED,
  work BLOB NOT NULL REFERENCES work DEFERRABLE INITIALLY DEFERRED,
  material BLOB NOT NULL REFERENCES material DEFERRABLE INITIALLY DEFERRED,
  amount REAL NOT NULL CHECK (amount > 0)
) STRICT, WITHOUT ROWID;
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
INSERT INTO design_capacitor VALUES(X'01a216c617f572068e4f92d33f3b6395',X'01a216c6153375ac87d6cd7d5fe3dfd9','C1','left of the processor',1000.0,6.2999999999999998223,105.0,8.0,16.0,NULL,'wet_aluminium','radial','ZQ','stripe towards the socket','processor_supply',NULL);
INSERT INTO design_capacitor VALUES(X'01a216c617f572068e4f92d4330126a3',X'01a216c6153375ac87d6cd7d5fe3dfd9','C2','left of the processor',1000.0,6.2999999999999998223,105.0,8.0,16.0,NULL,'wet_aluminium','radial','ZQ','stripe towards the socket','processor_supply',NULL);
INSERT INTO design_capacitor VALUES(X'01a216c617f572068e4f92d563cb4af8',X'01a216c6153375ac87d6cd7d5fe3dfd9','C3','left of the processor',1000.0,6.2999999999999998223,105.0,8.0,16.0,NULL,'wet_aluminium','radial','ZQ','stripe towards the socket','processor_supply',NULL);
INSERT INTO design_capacitor VALUES(X'01a216c617f572068e4f92d6dc3edc12',X'01a216c6153375ac87d6cd7d5fe3dfd9','C4','left of the processor, lower down',1000.0,6.2999999999999998223,105.0,8.0,16.0,NULL,'wet_aluminium','radial','ZQ','stripe towards the socket','processor_supply',NULL);
INSERT INTO design_capacitor VALUES(X'01a216c617f572068e4f92d7ad513a27',X'01a216c6153375ac87d6cd7d5fe3dfd9','C5','left of the processor, lower down',1000.0,6.2999999999999998223,105.0,8.0,16.0,NULL,'wet_aluminium','radial','ZQ','stripe towards the socket','processor_supply',NULL);
INSERT INTO design_capacitor VALUES(X'01a216c617f572068e4f92d81a10e78e',X'01a216c6153375ac87d6cd7d5fe3dfd9','C6','left of the processor, lower down',1000.0,6.2999999999999998223,105.0,8.0,16.0,NULL,'wet_aluminium','radial','ZQ','stripe towards the socket','processor_supply',NULL);
INSERT INTO design_capacitor VALUES(X'01a216c617f572068e4f92d9ff61b331',X'01a216c6153375ac87d6cd7d5fe3dfd9','C11','by the memory sockets',470.0,16.0,105.0,8.0,12.0,NULL,'wet_aluminium','radial','ZQ','',NULL,NULL);
INSERT INTO design_capacitor VALUES(X'01a216c617f572068e4f92da6bb9848f',X'01a216c6153375ac87d6cd7d5fe3dfd9','C12','by the memory sockets',470.0,16.0,105.0,8.0,12.0,NULL,'wet_aluminium','radial','ZQ','',NULL,NULL);
INSERT INTO design_capacitor VALUES(X'01a216c617f572068e4f92db5c4a15d6',X'01a216c6153375ac87d6cd7d5fe3dfd9','C13','by the memory sockets',470.0,16.0,105.0,8.0,12.0,NULL,'wet_aluminium','radial','ZQ','',NULL,NULL);
INSERT INTO design_capacitor VALUES(X'01a216c617f572068e4f92dcfb886b38',X'01a216c6153375ac87d6cd7d5fe3dfd9','C14','by the memory sockets',470.0,16.0,105.0,8.0,12.0,NULL,'wet_aluminium','radial','ZQ','',NULL,NULL);
INSERT INTO design_capacitor VALUES(X'01a216c617f572068e4f92dda21d5d02',X'01a216c6153375ac87d6cd7d5fe3dfd9','C20','under the heatsink clip',100.0,16.0,105.0,6.2999999999999998223,11.0,NULL,'wet_aluminium','radial','','',NULL,NULL);
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
INSERT INTO kit VALUES(X'01a216c617f97586ac4d6b9dcba22bd4','Second half of 0071','0071, bad ones','ordered','2026-11-16',470,'2026-11-16','2026-11-16','','','');
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
INSERT INTO kit_line VALUES(X'01a216c617f97586ac4d6b9e921213c9',X'01a216c617f97586ac4d6b9dcba22bd4',X'01a216c6153375ac87d6cd100afb903b',1000.0,6.2999999999999998223,105.0,8.0,16.0,NULL,'wet_aluminium','radial',1,1,2,1,35,'Hollin Parts by post','');
CREATE TABLE kit_position (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  line BLOB NOT NULL REFERENCES kit_line DEFERRABLE INITIALLY DEFERRED,
  capacitor BLOB NOT NULL REFERENCES capacitor DEFERRABLE INITIALLY DEFERRED
) STRICT, WITHOUT ROWID;
INSERT INTO kit_position VALUES(X'01a216c617f97586ac4d6b9fbc647db8',X'01a216c617f97586ac4d6b9e921213c9',X'01a216c616fd76498a564dc188cb2eba');
INSERT INTO kit_position VALUES(X'01a216c617f97586ac4d6ba0df7f5d57',X'01a216c617f97586ac4d6b9e921213c9',X'01a216c616fd76498a564dc28ca53b9f');
INSERT INTO kit_position VALUES(X'01a216c617f97586ac4d6ba12411824c',X'01a216c617f97586ac4d6b9e921213c9',X'01a216c616fd76498a564dc3cfa25a67');
CREATE INDEX history_by_change ON history (change);
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
CREATE INDEX work_after_by_part ON work_after (part);
CREATE INDEX work_after_by_work ON work_after (work);
CREATE INDEX work_after_by_after ON work_after ("after");
CREATE INDEX material_use_by_part ON material_use (part);
CREATE INDEX material_use_by_work ON material_use (work);
CREATE INDEX material_use_by_material ON material_use (material);
CREATE INDEX reading_by_proof ON reading (proof) WHERE proof IS NOT NULL;
CREATE INDEX reading_by_work ON reading (work) WHERE work IS NOT NULL;
CREATE INDEX attachment_by_proof ON attachment (proof) WHERE proof IS NOT NULL;
CREATE INDEX photo_mark_by_proof ON photo_mark (proof) WHERE proof IS NOT NULL;
CREATE INDEX design_capacitor_by_design ON design_capacitor (design);
CREATE INDEX kit_line_by_kit ON kit_line (kit);
CREATE INDEX kit_line_by_material ON kit_line (material) WHERE material IS NOT NULL;
CREATE INDEX kit_position_by_line ON kit_position (line);
CREATE INDEX kit_position_by_capacitor ON kit_position (capacitor);
CREATE TRIGGER history_workshop_insert AFTER INSERT ON workshop  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'workshop', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'name', NEW."name", 'keeper', NEW."keeper", 'currency', NEW."currency", 'note', NEW."note"));
                 END;
CREATE TRIGGER history_workshop_update AFTER UPDATE ON workshop WHEN OLD."id" IS NOT NEW."id" OR OLD."name" IS NOT NEW."name" OR OLD."keeper" IS NOT NEW."keeper" OR OLD."currency" IS NOT NEW."currency" OR OLD."note" IS NOT NEW."note" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'workshop', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'name', OLD."name", 'keeper', OLD."keeper", 'currency', OLD."currency", 'note', OLD."note"), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'name', NEW."name", 'keeper', NEW."keeper", 'currency', NEW."currency", 'note', NEW."note"));
                 END;
CREATE TRIGGER history_workshop_delete AFTER DELETE ON workshop  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'workshop', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'name', OLD."name", 'keeper', OLD."keeper", 'currency', OLD."currency", 'note', OLD."note"), NULL);
                 END;
CREATE TRIGGER history_place_insert AFTER INSERT ON place  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'place', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'within', iif(NEW."within" IS NULL, NULL, lower(hex(NEW."within"))), 'name', NEW."name", 'note', NEW."note"));
                 END;
CREATE TRIGGER history_place_update AFTER UPDATE ON place WHEN OLD."id" IS NOT NEW."id" OR OLD."within" IS NOT NEW."within" OR OLD."name" IS NOT NEW."name" OR OLD."note" IS NOT NEW."note" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'place', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'within', iif(OLD."within" IS NULL, NULL, lower(hex(OLD."within"))), 'name', OLD."name", 'note', OLD."note"), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'within', iif(NEW."within" IS NULL, NULL, lower(hex(NEW."within"))), 'name', NEW."name", 'note', NEW."note"));
                 END;
CREATE TRIGGER history_place_delete AFTER DELETE ON place  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'place', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'within', iif(OLD."within" IS NULL, NULL, lower(hex(OLD."within"))), 'name', OLD."name", 'note', OLD."note"), NULL);
                 END;
CREATE TRIGGER history_lot_insert AFTER INSERT ON lot  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'lot', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'name', NEW."name", 'acquired', NEW."acquired", 'source', NEW."source", 'price_cents', NEW."price_cents", 'note', NEW."note"));
                 END;
CREATE TRIGGER history_lot_update AFTER UPDATE ON lot WHEN OLD."id" IS NOT NEW."id" OR OLD."name" IS NOT NEW."name" OR OLD."acquired" IS NOT NEW."acquired" OR OLD."source" IS NOT NEW."source" OR OLD."price_cents" IS NOT NEW."price_cents" OR OLD."note" IS NOT NEW."note" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'lot', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'name', OLD."name", 'acquired', OLD."acquired", 'source', OLD."source", 'price_cents', OLD."price_cents", 'note', OLD."note"), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'name', NEW."name", 'acquired', NEW."acquired", 'source', NEW."source", 'price_cents', NEW."price_cents", 'note', NEW."note"));
                 END;
CREATE TRIGGER history_lot_delete AFTER DELETE ON lot  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'lot', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'name', OLD."name", 'acquired', OLD."acquired", 'source', OLD."source", 'price_cents', OLD."price_cents", 'note', OLD."note"), NULL);
                 END;
CREATE TRIGGER history_design_insert AFTER INSERT ON design  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'design', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'kind', NEW."kind", 'maker', NEW."maker", 'model', NEW."model", 'revision', NEW."revision", 'introduced', NEW."introduced", 'discontinued', NEW."discontinued", 'note', NEW."note"));
                 END;
CREATE TRIGGER history_design_update AFTER UPDATE ON design WHEN OLD."id" IS NOT NEW."id" OR OLD."kind" IS NOT NEW."kind" OR OLD."maker" IS NOT NEW."maker" OR OLD."model" IS NOT NEW."model" OR OLD."revision" IS NOT NEW."revision" OR OLD."introduced" IS NOT NEW."introduced" OR OLD."discontinued" IS NOT NEW."discontinued" OR OLD."note" IS NOT NEW."note" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'design', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'kind', OLD."kind", 'maker', OLD."maker", 'model', OLD."model", 'revision', OLD."revision", 'introduced', OLD."introduced", 'discontinued', OLD."discontinued", 'note', OLD."note"), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'kind', NEW."kind", 'maker', NEW."maker", 'model', NEW."model", 'revision', NEW."revision", 'introduced', NEW."introduced", 'discontinued', NEW."discontinued", 'note', NEW."note"));
                 END;
CREATE TRIGGER history_design_delete AFTER DELETE ON design  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'design', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'kind', OLD."kind", 'maker', OLD."maker", 'model', OLD."model", 'revision', OLD."revision", 'introduced', OLD."introduced", 'discontinued', OLD."discontinued", 'note', OLD."note"), NULL);
                 END;
CREATE TRIGGER history_design_connector_insert AFTER INSERT ON design_connector  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'design_connector', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'design', iif(NEW."design" IS NULL, NULL, lower(hex(NEW."design"))), 'side', NEW."side", 'connector', NEW."connector", 'count', NEW."count", 'note', NEW."note"));
                 END;
CREATE TRIGGER history_design_connector_update AFTER UPDATE ON design_connector WHEN OLD."id" IS NOT NEW."id" OR OLD."design" IS NOT NEW."design" OR OLD."side" IS NOT NEW."side" OR OLD."connector" IS NOT NEW."connector" OR OLD."count" IS NOT NEW."count" OR OLD."note" IS NOT NEW."note" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'design_connector', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'design', iif(OLD."design" IS NULL, NULL, lower(hex(OLD."design"))), 'side', OLD."side", 'connector', OLD."connector", 'count', OLD."count", 'note', OLD."note"), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'design', iif(NEW."design" IS NULL, NULL, lower(hex(NEW."design"))), 'side', NEW."side", 'connector', NEW."connector", 'count', NEW."count", 'note', NEW."note"));
                 END;
CREATE TRIGGER history_design_connector_delete AFTER DELETE ON design_connector  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'design_connector', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'design', iif(OLD."design" IS NULL, NULL, lower(hex(OLD."design"))), 'side', OLD."side", 'connector', OLD."connector", 'count', OLD."count", 'note', OLD."note"), NULL);
                 END;
CREATE TRIGGER history_design_figure_insert AFTER INSERT ON design_figure  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'design_figure', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'design', iif(NEW."design" IS NULL, NULL, lower(hex(NEW."design"))), 'figure', NEW."figure", 'value', NEW."value", 'source', NEW."source", 'at_bus_mhz', NEW."at_bus_mhz"));
                 END;
CREATE TRIGGER history_design_figure_update AFTER UPDATE ON design_figure WHEN OLD."id" IS NOT NEW."id" OR OLD."design" IS NOT NEW."design" OR OLD."figure" IS NOT NEW."figure" OR OLD."value" IS NOT NEW."value" OR OLD."source" IS NOT NEW."source" OR OLD."at_bus_mhz" IS NOT NEW."at_bus_mhz" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'design_figure', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'design', iif(OLD."design" IS NULL, NULL, lower(hex(OLD."design"))), 'figure', OLD."figure", 'value', OLD."value", 'source', OLD."source", 'at_bus_mhz', OLD."at_bus_mhz"), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'design', iif(NEW."design" IS NULL, NULL, lower(hex(NEW."design"))), 'figure', NEW."figure", 'value', NEW."value", 'source', NEW."source", 'at_bus_mhz', NEW."at_bus_mhz"));
                 END;
CREATE TRIGGER history_design_figure_delete AFTER DELETE ON design_figure  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'design_figure', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'design', iif(OLD."design" IS NULL, NULL, lower(hex(OLD."design"))), 'figure', OLD."figure", 'value', OLD."value", 'source', OLD."source", 'at_bus_mhz', OLD."at_bus_mhz"), NULL);
                 END;
CREATE TRIGGER history_design_capacitor_insert AFTER INSERT ON design_capacitor  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'design_capacitor', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'design', iif(NEW."design" IS NULL, NULL, lower(hex(NEW."design"))), 'designator', NEW."designator", 'place_on_part', NEW."place_on_part", 'capacitance_uf', NEW."capacitance_uf", 'voltage_v', NEW."voltage_v", 'temperature_c', NEW."temperature_c", 'diameter_mm', NEW."diameter_mm", 'height_mm', NEW."height_mm", 'pitch_mm', NEW."pitch_mm", 'dielectric', NEW."dielectric", 'mounting', NEW."mounting", 'series', NEW."series", 'polarity', NEW."polarity", 'function', NEW."function", 'low_esr', NEW."low_esr"));
                 END;
CREATE TRIGGER history_design_capacitor_update AFTER UPDATE ON design_capacitor WHEN OLD."id" IS NOT NEW."id" OR OLD."design" IS NOT NEW."design" OR OLD."designator" IS NOT NEW."designator" OR OLD."place_on_part" IS NOT NEW."place_on_part" OR OLD."capacitance_uf" IS NOT NEW."capacitance_uf" OR OLD."voltage_v" IS NOT NEW."voltage_v" OR OLD."temperature_c" IS NOT NEW."temperature_c" OR OLD."diameter_mm" IS NOT NEW."diameter_mm" OR OLD."height_mm" IS NOT NEW."height_mm" OR OLD."pitch_mm" IS NOT NEW."pitch_mm" OR OLD."dielectric" IS NOT NEW."dielectric" OR OLD."mounting" IS NOT NEW."mounting" OR OLD."series" IS NOT NEW."series" OR OLD."polarity" IS NOT NEW."polarity" OR OLD."function" IS NOT NEW."function" OR OLD."low_esr" IS NOT NEW."low_esr" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'design_capacitor', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'design', iif(OLD."design" IS NULL, NULL, lower(hex(OLD."design"))), 'designator', OLD."designator", 'place_on_part', OLD."place_on_part", 'capacitance_uf', OLD."capacitance_uf", 'voltage_v', OLD."voltage_v", 'temperature_c', OLD."temperature_c", 'diameter_mm', OLD."diameter_mm", 'height_mm', OLD."height_mm", 'pitch_mm', OLD."pitch_mm", 'dielectric', OLD."dielectric", 'mounting', OLD."mounting", 'series', OLD."series", 'polarity', OLD."polarity", 'function', OLD."function", 'low_esr', OLD."low_esr"), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'design', iif(NEW."design" IS NULL, NULL, lower(hex(NEW."design"))), 'designator', NEW."designator", 'place_on_part', NEW."place_on_part", 'capacitance_uf', NEW."capacitance_uf", 'voltage_v', NEW."voltage_v", 'temperature_c', NEW."temperature_c", 'diameter_mm', NEW."diameter_mm", 'height_mm', NEW."height_mm", 'pitch_mm', NEW."pitch_mm", 'dielectric', NEW."dielectric", 'mounting', NEW."mounting", 'series', NEW."series", 'polarity', NEW."polarity", 'function', NEW."function", 'low_esr', NEW."low_esr"));
                 END;
CREATE TRIGGER history_design_capacitor_delete AFTER DELETE ON design_capacitor  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'design_capacitor', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'design', iif(OLD."design" IS NULL, NULL, lower(hex(OLD."design"))), 'designator', OLD."designator", 'place_on_part', OLD."place_on_part", 'capacitance_uf', OLD."capacitance_uf", 'voltage_v', OLD."voltage_v", 'temperature_c', OLD."temperature_c", 'diameter_mm', OLD."diameter_mm", 'height_mm', OLD."height_mm", 'pitch_mm', OLD."pitch_mm", 'dielectric', OLD."dielectric", 'mounting', OLD."mounting", 'series', OLD."series", 'polarity', OLD."polarity", 'function', OLD."function", 'low_esr', OLD."low_esr"), NULL);
                 END;
CREATE TRIGGER history_material_insert AFTER INSERT ON material  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'material', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'name', NEW."name", 'unit', NEW."unit", 'stock', NEW."stock", 'minimum', NEW."minimum", 'place', iif(NEW."place" IS NULL, NULL, lower(hex(NEW."place"))), 'price_cents', NEW."price_cents", 'supplier', NEW."supplier", 'note', NEW."note", 'capacitance_uf', NEW."capacitance_uf", 'voltage_v', NEW."voltage_v", 'temperature_c', NEW."temperature_c", 'diameter_mm', NEW."diameter_mm", 'height_mm', NEW."height_mm", 'pitch_mm', NEW."pitch_mm", 'dielectric', NEW."dielectric", 'mounting', NEW."mounting", 'low_esr', NEW."low_esr", 'on_order', NEW."on_order"));
                 END;
CREATE TRIGGER history_material_update AFTER UPDATE ON material WHEN OLD."id" IS NOT NEW."id" OR OLD."name" IS NOT NEW."name" OR OLD."unit" IS NOT NEW."unit" OR OLD."stock" IS NOT NEW."stock" OR OLD."minimum" IS NOT NEW."minimum" OR OLD."place" IS NOT NEW."place" OR OLD."price_cents" IS NOT NEW."price_cents" OR OLD."supplier" IS NOT NEW."supplier" OR OLD."note" IS NOT NEW."note" OR OLD."capacitance_uf" IS NOT NEW."capacitance_uf" OR OLD."voltage_v" IS NOT NEW."voltage_v" OR OLD."temperature_c" IS NOT NEW."temperature_c" OR OLD."diameter_mm" IS NOT NEW."diameter_mm" OR OLD."height_mm" IS NOT NEW."height_mm" OR OLD."pitch_mm" IS NOT NEW."pitch_mm" OR OLD."dielectric" IS NOT NEW."dielectric" OR OLD."mounting" IS NOT NEW."mounting" OR OLD."low_esr" IS NOT NEW."low_esr" OR OLD."on_order" IS NOT NEW."on_order" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'material', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'name', OLD."name", 'unit', OLD."unit", 'stock', OLD."stock", 'minimum', OLD."minimum", 'place', iif(OLD."place" IS NULL, NULL, lower(hex(OLD."place"))), 'price_cents', OLD."price_cents", 'supplier', OLD."supplier", 'note', OLD."note", 'capacitance_uf', OLD."capacitance_uf", 'voltage_v', OLD."voltage_v", 'temperature_c', OLD."temperature_c", 'diameter_mm', OLD."diameter_mm", 'height_mm', OLD."height_mm", 'pitch_mm', OLD."pitch_mm", 'dielectric', OLD."dielectric", 'mounting', OLD."mounting", 'low_esr', OLD."low_esr", 'on_order', OLD."on_order"), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'name', NEW."name", 'unit', NEW."unit", 'stock', NEW."stock", 'minimum', NEW."minimum", 'place', iif(NEW."place" IS NULL, NULL, lower(hex(NEW."place"))), 'price_cents', NEW."price_cents", 'supplier', NEW."supplier", 'note', NEW."note", 'capacitance_uf', NEW."capacitance_uf", 'voltage_v', NEW."voltage_v", 'temperature_c', NEW."temperature_c", 'diameter_mm', NEW."diameter_mm", 'height_mm', NEW."height_mm", 'pitch_mm', NEW."pitch_mm", 'dielectric', NEW."dielectric", 'mounting', NEW."mounting", 'low_esr', NEW."low_esr", 'on_order', NEW."on_order"));
                 END;
CREATE TRIGGER history_material_delete AFTER DELETE ON material  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'material', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'name', OLD."name", 'unit', OLD."unit", 'stock', OLD."stock", 'minimum', OLD."minimum", 'place', iif(OLD."place" IS NULL, NULL, lower(hex(OLD."place"))), 'price_cents', OLD."price_cents", 'supplier', OLD."supplier", 'note', OLD."note", 'capacitance_uf', OLD."capacitance_uf", 'voltage_v', OLD."voltage_v", 'temperature_c', OLD."temperature_c", 'diameter_mm', OLD."diameter_mm", 'height_mm', OLD."height_mm", 'pitch_mm', OLD."pitch_mm", 'dielectric', OLD."dielectric", 'mounting', OLD."mounting", 'low_esr', OLD."low_esr", 'on_order', OLD."on_order"), NULL);
                 END;
CREATE TRIGGER history_part_insert AFTER INSERT ON part  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'part', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'tag', NEW."tag", 'kind', NEW."kind", 'design', iif(NEW."design" IS NULL, NULL, lower(hex(NEW."design"))), 'name', NEW."name", 'serial', NEW."serial", 'originality', NEW."originality", 'lot', iif(NEW."lot" IS NULL, NULL, lower(hex(NEW."lot"))), 'price_cents', NEW."price_cents", 'acquired', NEW."acquired", 'place', iif(NEW."place" IS NULL, NULL, lower(hex(NEW."place"))), 'inside', iif(NEW."inside" IS NULL, NULL, lower(hex(NEW."inside"))), 'quarantine', NEW."quarantine", 'quarantined', NEW."quarantined", 'note', NEW."note"));
                 END;
CREATE TRIGGER history_part_update AFTER UPDATE ON part WHEN OLD."id" IS NOT NEW."id" OR OLD."tag" IS NOT NEW."tag" OR OLD."kind" IS NOT NEW."kind" OR OLD."design" IS NOT NEW."design" OR OLD."name" IS NOT NEW."name" OR OLD."serial" IS NOT NEW."serial" OR OLD."originality" IS NOT NEW."originality" OR OLD."lot" IS NOT NEW."lot" OR OLD."price_cents" IS NOT NEW."price_cents" OR OLD."acquired" IS NOT NEW."acquired" OR OLD."place" IS NOT NEW."place" OR OLD."inside" IS NOT NEW."inside" OR OLD."quarantine" IS NOT NEW."quarantine" OR OLD."quarantined" IS NOT NEW."quarantined" OR OLD."note" IS NOT NEW."note" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'part', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'tag', OLD."tag", 'kind', OLD."kind", 'design', iif(OLD."design" IS NULL, NULL, lower(hex(OLD."design"))), 'name', OLD."name", 'serial', OLD."serial", 'originality', OLD."originality", 'lot', iif(OLD."lot" IS NULL, NULL, lower(hex(OLD."lot"))), 'price_cents', OLD."price_cents", 'acquired', OLD."acquired", 'place', iif(OLD."place" IS NULL, NULL, lower(hex(OLD."place"))), 'inside', iif(OLD."inside" IS NULL, NULL, lower(hex(OLD."inside"))), 'quarantine', OLD."quarantine", 'quarantined', OLD."quarantined", 'note', OLD."note"), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'tag', NEW."tag", 'kind', NEW."kind", 'design', iif(NEW."design" IS NULL, NULL, lower(hex(NEW."design"))), 'name', NEW."name", 'serial', NEW."serial", 'originality', NEW."originality", 'lot', iif(NEW."lot" IS NULL, NULL, lower(hex(NEW."lot"))), 'price_cents', NEW."price_cents", 'acquired', NEW."acquired", 'place', iif(NEW."place" IS NULL, NULL, lower(hex(NEW."place"))), 'inside', iif(NEW."inside" IS NULL, NULL, lower(hex(NEW."inside"))), 'quarantine', NEW."quarantine", 'quarantined', NEW."quarantined", 'note', NEW."note"));
                 END;
CREATE TRIGGER history_part_delete AFTER DELETE ON part  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'part', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'tag', OLD."tag", 'kind', OLD."kind", 'design', iif(OLD."design" IS NULL, NULL, lower(hex(OLD."design"))), 'name', OLD."name", 'serial', OLD."serial", 'originality', OLD."originality", 'lot', iif(OLD."lot" IS NULL, NULL, lower(hex(OLD."lot"))), 'price_cents', OLD."price_cents", 'acquired', OLD."acquired", 'place', iif(OLD."place" IS NULL, NULL, lower(hex(OLD."place"))), 'inside', iif(OLD."inside" IS NULL, NULL, lower(hex(OLD."inside"))), 'quarantine', OLD."quarantine", 'quarantined', OLD."quarantined", 'note', OLD."note"), NULL);
                 END;
CREATE TRIGGER history_machine_insert AFTER INSERT ON machine  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'machine', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'name', NEW."name", 'purpose', NEW."purpose", 'window_from', NEW."window_from", 'window_to', NEW."window_to", 'standing', NEW."standing", 'priority', NEW."priority", 'note', NEW."note"));
                 END;
CREATE TRIGGER history_machine_update AFTER UPDATE ON machine WHEN OLD."id" IS NOT NEW."id" OR OLD."name" IS NOT NEW."name" OR OLD."purpose" IS NOT NEW."purpose" OR OLD."window_from" IS NOT NEW."window_from" OR OLD."window_to" IS NOT NEW."window_to" OR OLD."standing" IS NOT NEW."standing" OR OLD."priority" IS NOT NEW."priority" OR OLD."note" IS NOT NEW."note" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'machine', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'name', OLD."name", 'purpose', OLD."purpose", 'window_from', OLD."window_from", 'window_to', OLD."window_to", 'standing', OLD."standing", 'priority', OLD."priority", 'note', OLD."note"), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'name', NEW."name", 'purpose', NEW."purpose", 'window_from', NEW."window_from", 'window_to', NEW."window_to", 'standing', NEW."standing", 'priority', NEW."priority", 'note', NEW."note"));
                 END;
CREATE TRIGGER history_machine_delete AFTER DELETE ON machine  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'machine', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'name', OLD."name", 'purpose', OLD."purpose", 'window_from', OLD."window_from", 'window_to', OLD."window_to", 'standing', OLD."standing", 'priority', OLD."priority", 'note', OLD."note"), NULL);
                 END;
CREATE TRIGGER history_role_insert AFTER INSERT ON role  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'role', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'machine', iif(NEW."machine" IS NULL, NULL, lower(hex(NEW."machine"))), 'kind', NEW."kind", 'name', NEW."name", 'required', NEW."required", 'count', NEW."count", 'note', NEW."note", 'or_kinds', NEW."or_kinds"));
                 END;
CREATE TRIGGER history_role_update AFTER UPDATE ON role WHEN OLD."id" IS NOT NEW."id" OR OLD."machine" IS NOT NEW."machine" OR OLD."kind" IS NOT NEW."kind" OR OLD."name" IS NOT NEW."name" OR OLD."required" IS NOT NEW."required" OR OLD."count" IS NOT NEW."count" OR OLD."note" IS NOT NEW."note" OR OLD."or_kinds" IS NOT NEW."or_kinds" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'role', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'machine', iif(OLD."machine" IS NULL, NULL, lower(hex(OLD."machine"))), 'kind', OLD."kind", 'name', OLD."name", 'required', OLD."required", 'count', OLD."count", 'note', OLD."note", 'or_kinds', OLD."or_kinds"), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'machine', iif(NEW."machine" IS NULL, NULL, lower(hex(NEW."machine"))), 'kind', NEW."kind", 'name', NEW."name", 'required', NEW."required", 'count', NEW."count", 'note', NEW."note", 'or_kinds', NEW."or_kinds"));
                 END;
CREATE TRIGGER history_role_delete AFTER DELETE ON role  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'role', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'machine', iif(OLD."machine" IS NULL, NULL, lower(hex(OLD."machine"))), 'kind', OLD."kind", 'name', OLD."name", 'required', OLD."required", 'count', OLD."count", 'note', OLD."note", 'or_kinds', OLD."or_kinds"), NULL);
                 END;
CREATE TRIGGER history_placement_insert AFTER INSERT ON placement  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'placement', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'machine', iif(NEW."machine" IS NULL, NULL, lower(hex(NEW."machine"))), 'role', iif(NEW."role" IS NULL, NULL, lower(hex(NEW."role"))), 'part', iif(NEW."part" IS NULL, NULL, lower(hex(NEW."part"))), 'pinned', NEW."pinned", 'planned_on', NEW."planned_on", 'planned_sequence', NEW."planned_sequence", 'reason', NEW."reason"));
                 END;
CREATE TRIGGER history_placement_update AFTER UPDATE ON placement WHEN OLD."id" IS NOT NEW."id" OR OLD."machine" IS NOT NEW."machine" OR OLD."role" IS NOT NEW."role" OR OLD."part" IS NOT NEW."part" OR OLD."pinned" IS NOT NEW."pinned" OR OLD."planned_on" IS NOT NEW."planned_on" OR OLD."planned_sequence" IS NOT NEW."planned_sequence" OR OLD."reason" IS NOT NEW."reason" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'placement', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'machine', iif(OLD."machine" IS NULL, NULL, lower(hex(OLD."machine"))), 'role', iif(OLD."role" IS NULL, NULL, lower(hex(OLD."role"))), 'part', iif(OLD."part" IS NULL, NULL, lower(hex(OLD."part"))), 'pinned', OLD."pinned", 'planned_on', OLD."planned_on", 'planned_sequence', OLD."planned_sequence", 'reason', OLD."reason"), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'machine', iif(NEW."machine" IS NULL, NULL, lower(hex(NEW."machine"))), 'role', iif(NEW."role" IS NULL, NULL, lower(hex(NEW."role"))), 'part', iif(NEW."part" IS NULL, NULL, lower(hex(NEW."part"))), 'pinned', NEW."pinned", 'planned_on', NEW."planned_on", 'planned_sequence', NEW."planned_sequence", 'reason', NEW."reason"));
                 END;
CREATE TRIGGER history_placement_delete AFTER DELETE ON placement  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'placement', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'machine', iif(OLD."machine" IS NULL, NULL, lower(hex(OLD."machine"))), 'role', iif(OLD."role" IS NULL, NULL, lower(hex(OLD."role"))), 'part', iif(OLD."part" IS NULL, NULL, lower(hex(OLD."part"))), 'pinned', OLD."pinned", 'planned_on', OLD."planned_on", 'planned_sequence', OLD."planned_sequence", 'reason', OLD."reason"), NULL);
                 END;
CREATE TRIGGER history_fitting_insert AFTER INSERT ON fitting  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'fitting', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'machine', iif(NEW."machine" IS NULL, NULL, lower(hex(NEW."machine"))), 'role', iif(NEW."role" IS NULL, NULL, lower(hex(NEW."role"))), 'part', iif(NEW."part" IS NULL, NULL, lower(hex(NEW."part"))), 'fitted_on', NEW."fitted_on", 'fitted_sequence', NEW."fitted_sequence", 'removed_on', NEW."removed_on", 'removed_sequence', NEW."removed_sequence", 'note', NEW."note"));
                 END;
CREATE TRIGGER history_fitting_update AFTER UPDATE ON fitting WHEN OLD."id" IS NOT NEW."id" OR OLD."machine" IS NOT NEW."machine" OR OLD."role" IS NOT NEW."role" OR OLD."part" IS NOT NEW."part" OR OLD."fitted_on" IS NOT NEW."fitted_on" OR OLD."fitted_sequence" IS NOT NEW."fitted_sequence" OR OLD."removed_on" IS NOT NEW."removed_on" OR OLD."removed_sequence" IS NOT NEW."removed_sequence" OR OLD."note" IS NOT NEW."note" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'fitting', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'machine', iif(OLD."machine" IS NULL, NULL, lower(hex(OLD."machine"))), 'role', iif(OLD."role" IS NULL, NULL, lower(hex(OLD."role"))), 'part', iif(OLD."part" IS NULL, NULL, lower(hex(OLD."part"))), 'fitted_on', OLD."fitted_on", 'fitted_sequence', OLD."fitted_sequence", 'removed_on', OLD."removed_on", 'removed_sequence', OLD."removed_sequence", 'note', OLD."note"), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'machine', iif(NEW."machine" IS NULL, NULL, lower(hex(NEW."machine"))), 'role', iif(NEW."role" IS NULL, NULL, lower(hex(NEW."role"))), 'part', iif(NEW."part" IS NULL, NULL, lower(hex(NEW."part"))), 'fitted_on', NEW."fitted_on", 'fitted_sequence', NEW."fitted_sequence", 'removed_on', NEW."removed_on", 'removed_sequence', NEW."removed_sequence", 'note', NEW."note"));
                 END;
CREATE TRIGGER history_fitting_delete AFTER DELETE ON fitting  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'fitting', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'machine', iif(OLD."machine" IS NULL, NULL, lower(hex(OLD."machine"))), 'role', iif(OLD."role" IS NULL, NULL, lower(hex(OLD."role"))), 'part', iif(OLD."part" IS NULL, NULL, lower(hex(OLD."part"))), 'fitted_on', OLD."fitted_on", 'fitted_sequence', OLD."fitted_sequence", 'removed_on', OLD."removed_on", 'removed_sequence', OLD."removed_sequence", 'note', OLD."note"), NULL);
                 END;
CREATE TRIGGER history_power_on_insert AFTER INSERT ON power_on  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'power_on', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'machine', iif(NEW."machine" IS NULL, NULL, lower(hex(NEW."machine"))), 'switched_on', NEW."switched_on", 'switched_sequence', NEW."switched_sequence", 'configuration', NEW."configuration", 'settings', NEW."settings", 'steps', NEW."steps", 'result', NEW."result", 'happened', NEW."happened", 'who', NEW."who"));
                 END;
CREATE TRIGGER history_power_on_update AFTER UPDATE ON power_on WHEN OLD."id" IS NOT NEW."id" OR OLD."machine" IS NOT NEW."machine" OR OLD."switched_on" IS NOT NEW."switched_on" OR OLD."switched_sequence" IS NOT NEW."switched_sequence" OR OLD."configuration" IS NOT NEW."configuration" OR OLD."settings" IS NOT NEW."settings" OR OLD."steps" IS NOT NEW."steps" OR OLD."result" IS NOT NEW."result" OR OLD."happened" IS NOT NEW."happened" OR OLD."who" IS NOT NEW."who" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'power_on', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'machine', iif(OLD."machine" IS NULL, NULL, lower(hex(OLD."machine"))), 'switched_on', OLD."switched_on", 'switched_sequence', OLD."switched_sequence", 'configuration', OLD."configuration", 'settings', OLD."settings", 'steps', OLD."steps", 'result', OLD."result", 'happened', OLD."happened", 'who', OLD."who"), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'machine', iif(NEW."machine" IS NULL, NULL, lower(hex(NEW."machine"))), 'switched_on', NEW."switched_on", 'switched_sequence', NEW."switched_sequence", 'configuration', NEW."configuration", 'settings', NEW."settings", 'steps', NEW."steps", 'result', NEW."result", 'happened', NEW."happened", 'who', NEW."who"));
                 END;
CREATE TRIGGER history_power_on_delete AFTER DELETE ON power_on  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'power_on', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'machine', iif(OLD."machine" IS NULL, NULL, lower(hex(OLD."machine"))), 'switched_on', OLD."switched_on", 'switched_sequence', OLD."switched_sequence", 'configuration', OLD."configuration", 'settings', OLD."settings", 'steps', OLD."steps", 'result', OLD."result", 'happened', OLD."happened", 'who', OLD."who"), NULL);
                 END;
CREATE TRIGGER history_marking_insert AFTER INSERT ON marking  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'marking', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'part', iif(NEW."part" IS NULL, NULL, lower(hex(NEW."part"))), 'read_on', NEW."read_on", 'read_sequence', NEW."read_sequence", 'surface', NEW."surface", 'place_on_part', NEW."place_on_part", 'text', NEW."text", 'from_factory', NEW."from_factory", 'scheme', NEW."scheme", 'supersedes', iif(NEW."supersedes" IS NULL, NULL, lower(hex(NEW."supersedes"))), 'note', NEW."note"));
                 END;
CREATE TRIGGER history_marking_update AFTER UPDATE ON marking WHEN OLD."id" IS NOT NEW."id" OR OLD."part" IS NOT NEW."part" OR OLD."read_on" IS NOT NEW."read_on" OR OLD."read_sequence" IS NOT NEW."read_sequence" OR OLD."surface" IS NOT NEW."surface" OR OLD."place_on_part" IS NOT NEW."place_on_part" OR OLD."text" IS NOT NEW."text" OR OLD."from_factory" IS NOT NEW."from_factory" OR OLD."scheme" IS NOT NEW."scheme" OR OLD."supersedes" IS NOT NEW."supersedes" OR OLD."note" IS NOT NEW."note" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'marking', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'part', iif(OLD."part" IS NULL, NULL, lower(hex(OLD."part"))), 'read_on', OLD."read_on", 'read_sequence', OLD."read_sequence", 'surface', OLD."surface", 'place_on_part', OLD."place_on_part", 'text', OLD."text", 'from_factory', OLD."from_factory", 'scheme', OLD."scheme", 'supersedes', iif(OLD."supersedes" IS NULL, NULL, lower(hex(OLD."supersedes"))), 'note', OLD."note"), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'part', iif(NEW."part" IS NULL, NULL, lower(hex(NEW."part"))), 'read_on', NEW."read_on", 'read_sequence', NEW."read_sequence", 'surface', NEW."surface", 'place_on_part', NEW."place_on_part", 'text', NEW."text", 'from_factory', NEW."from_factory", 'scheme', NEW."scheme", 'supersedes', iif(NEW."supersedes" IS NULL, NULL, lower(hex(NEW."supersedes"))), 'note', NEW."note"));
                 END;
CREATE TRIGGER history_marking_delete AFTER DELETE ON marking  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'marking', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'part', iif(OLD."part" IS NULL, NULL, lower(hex(OLD."part"))), 'read_on', OLD."read_on", 'read_sequence', OLD."read_sequence", 'surface', OLD."surface", 'place_on_part', OLD."place_on_part", 'text', OLD."text", 'from_factory', OLD."from_factory", 'scheme', OLD."scheme", 'supersedes', iif(OLD."supersedes" IS NULL, NULL, lower(hex(OLD."supersedes"))), 'note', OLD."note"), NULL);
                 END;
CREATE TRIGGER history_survey_insert AFTER INSERT ON survey  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'survey', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'part', iif(NEW."part" IS NULL, NULL, lower(hex(NEW."part"))), 'looked_on', NEW."looked_on", 'looked_sequence', NEW."looked_sequence", 'who', NEW."who", 'why', NEW."why", 'supersedes', iif(NEW."supersedes" IS NULL, NULL, lower(hex(NEW."supersedes"))), 'note', NEW."note", 'answers', NEW."answers"));
                 END;
CREATE TRIGGER history_survey_update AFTER UPDATE ON survey WHEN OLD."id" IS NOT NEW."id" OR OLD."part" IS NOT NEW."part" OR OLD."looked_on" IS NOT NEW."looked_on" OR OLD."looked_sequence" IS NOT NEW."looked_sequence" OR OLD."who" IS NOT NEW."who" OR OLD."why" IS NOT NEW."why" OR OLD."supersedes" IS NOT NEW."supersedes" OR OLD."note" IS NOT NEW."note" OR OLD."answers" IS NOT NEW."answers" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'survey', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'part', iif(OLD."part" IS NULL, NULL, lower(hex(OLD."part"))), 'looked_on', OLD."looked_on", 'looked_sequence', OLD."looked_sequence", 'who', OLD."who", 'why', OLD."why", 'supersedes', iif(OLD."supersedes" IS NULL, NULL, lower(hex(OLD."supersedes"))), 'note', OLD."note", 'answers', OLD."answers"), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'part', iif(NEW."part" IS NULL, NULL, lower(hex(NEW."part"))), 'looked_on', NEW."looked_on", 'looked_sequence', NEW."looked_sequence", 'who', NEW."who", 'why', NEW."why", 'supersedes', iif(NEW."supersedes" IS NULL, NULL, lower(hex(NEW."supersedes"))), 'note', NEW."note", 'answers', NEW."answers"));
                 END;
CREATE TRIGGER history_survey_delete AFTER DELETE ON survey  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'survey', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'part', iif(OLD."part" IS NULL, NULL, lower(hex(OLD."part"))), 'looked_on', OLD."looked_on", 'looked_sequence', OLD."looked_sequence", 'who', OLD."who", 'why', OLD."why", 'supersedes', iif(OLD."supersedes" IS NULL, NULL, lower(hex(OLD."supersedes"))), 'note', OLD."note", 'answers', OLD."answers"), NULL);
                 END;
CREATE TRIGGER history_finding_insert AFTER INSERT ON finding  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'finding', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'part', iif(NEW."part" IS NULL, NULL, lower(hex(NEW."part"))), 'what', NEW."what", 'place_on_part', NEW."place_on_part", 'source', NEW."source", 'question', NEW."question", 'note', NEW."note"));
                 END;
CREATE TRIGGER history_finding_update AFTER UPDATE ON finding WHEN OLD."id" IS NOT NEW."id" OR OLD."part" IS NOT NEW."part" OR OLD."what" IS NOT NEW."what" OR OLD."place_on_part" IS NOT NEW."place_on_part" OR OLD."source" IS NOT NEW."source" OR OLD."question" IS NOT NEW."question" OR OLD."note" IS NOT NEW."note" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'finding', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'part', iif(OLD."part" IS NULL, NULL, lower(hex(OLD."part"))), 'what', OLD."what", 'place_on_part', OLD."place_on_part", 'source', OLD."source", 'question', OLD."question", 'note', OLD."note"), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'part', iif(NEW."part" IS NULL, NULL, lower(hex(NEW."part"))), 'what', NEW."what", 'place_on_part', NEW."place_on_part", 'source', NEW."source", 'question', NEW."question", 'note', NEW."note"));
                 END;
CREATE TRIGGER history_finding_delete AFTER DELETE ON finding  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'finding', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'part', iif(OLD."part" IS NULL, NULL, lower(hex(OLD."part"))), 'what', OLD."what", 'place_on_part', OLD."place_on_part", 'source', OLD."source", 'question', OLD."question", 'note', OLD."note"), NULL);
                 END;
CREATE TRIGGER history_work_insert AFTER INSERT ON work  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'work', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'part', iif(NEW."part" IS NULL, NULL, lower(hex(NEW."part"))), 'finding', iif(NEW."finding" IS NULL, NULL, lower(hex(NEW."finding"))), 'rule', NEW."rule", 'title', NEW."title", 'hold', NEW."hold", 'nature', NEW."nature", 'state', NEW."state", 'changed_on', NEW."changed_on", 'changed_sequence', NEW."changed_sequence", 'who', NEW."who", 'minutes', NEW."minutes", 'used', NEW."used", 'reason', NEW."reason", 'reversible', NEW."reversible", 'note', NEW."note", 'touches', NEW."touches"));
                 END;
CREATE TRIGGER history_work_update AFTER UPDATE ON work WHEN OLD."id" IS NOT NEW."id" OR OLD."part" IS NOT NEW."part" OR OLD."finding" IS NOT NEW."finding" OR OLD."rule" IS NOT NEW."rule" OR OLD."title" IS NOT NEW."title" OR OLD."hold" IS NOT NEW."hold" OR OLD."nature" IS NOT NEW."nature" OR OLD."state" IS NOT NEW."state" OR OLD."changed_on" IS NOT NEW."changed_on" OR OLD."changed_sequence" IS NOT NEW."changed_sequence" OR OLD."who" IS NOT NEW."who" OR OLD."minutes" IS NOT NEW."minutes" OR OLD."used" IS NOT NEW."used" OR OLD."reason" IS NOT NEW."reason" OR OLD."reversible" IS NOT NEW."reversible" OR OLD."note" IS NOT NEW."note" OR OLD."touches" IS NOT NEW."touches" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'work', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'part', iif(OLD."part" IS NULL, NULL, lower(hex(OLD."part"))), 'finding', iif(OLD."finding" IS NULL, NULL, lower(hex(OLD."finding"))), 'rule', OLD."rule", 'title', OLD."title", 'hold', OLD."hold", 'nature', OLD."nature", 'state', OLD."state", 'changed_on', OLD."changed_on", 'changed_sequence', OLD."changed_sequence", 'who', OLD."who", 'minutes', OLD."minutes", 'used', OLD."used", 'reason', OLD."reason", 'reversible', OLD."reversible", 'note', OLD."note", 'touches', OLD."touches"), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'part', iif(NEW."part" IS NULL, NULL, lower(hex(NEW."part"))), 'finding', iif(NEW."finding" IS NULL, NULL, lower(hex(NEW."finding"))), 'rule', NEW."rule", 'title', NEW."title", 'hold', NEW."hold", 'nature', NEW."nature", 'state', NEW."state", 'changed_on', NEW."changed_on", 'changed_sequence', NEW."changed_sequence", 'who', NEW."who", 'minutes', NEW."minutes", 'used', NEW."used", 'reason', NEW."reason", 'reversible', NEW."reversible", 'note', NEW."note", 'touches', NEW."touches"));
                 END;
CREATE TRIGGER history_work_delete AFTER DELETE ON work  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'work', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'part', iif(OLD."part" IS NULL, NULL, lower(hex(OLD."part"))), 'finding', iif(OLD."finding" IS NULL, NULL, lower(hex(OLD."finding"))), 'rule', OLD."rule", 'title', OLD."title", 'hold', OLD."hold", 'nature', OLD."nature", 'state', OLD."state", 'changed_on', OLD."changed_on", 'changed_sequence', OLD."changed_sequence", 'who', OLD."who", 'minutes', OLD."minutes", 'used', OLD."used", 'reason', OLD."reason", 'reversible', OLD."reversible", 'note', OLD."note", 'touches', OLD."touches"), NULL);
                 END;
CREATE TRIGGER history_work_after_insert AFTER INSERT ON work_after  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'work_after', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'part', iif(NEW."part" IS NULL, NULL, lower(hex(NEW."part"))), 'work', iif(NEW."work" IS NULL, NULL, lower(hex(NEW."work"))), 'after', iif(NEW."after" IS NULL, NULL, lower(hex(NEW."after")))));
                 END;
CREATE TRIGGER history_work_after_update AFTER UPDATE ON work_after WHEN OLD."id" IS NOT NEW."id" OR OLD."part" IS NOT NEW."part" OR OLD."work" IS NOT NEW."work" OR OLD."after" IS NOT NEW."after" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'work_after', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'part', iif(OLD."part" IS NULL, NULL, lower(hex(OLD."part"))), 'work', iif(OLD."work" IS NULL, NULL, lower(hex(OLD."work"))), 'after', iif(OLD."after" IS NULL, NULL, lower(hex(OLD."after")))), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'part', iif(NEW."part" IS NULL, NULL, lower(hex(NEW."part"))), 'work', iif(NEW."work" IS NULL, NULL, lower(hex(NEW."work"))), 'after', iif(NEW."after" IS NULL, NULL, lower(hex(NEW."after")))));
                 END;
CREATE TRIGGER history_work_after_delete AFTER DELETE ON work_after  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'work_after', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'part', iif(OLD."part" IS NULL, NULL, lower(hex(OLD."part"))), 'work', iif(OLD."work" IS NULL, NULL, lower(hex(OLD."work"))), 'after', iif(OLD."after" IS NULL, NULL, lower(hex(OLD."after")))), NULL);
                 END;
CREATE TRIGGER history_material_use_insert AFTER INSERT ON material_use  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'material_use', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'part', iif(NEW."part" IS NULL, NULL, lower(hex(NEW."part"))), 'work', iif(NEW."work" IS NULL, NULL, lower(hex(NEW."work"))), 'material', iif(NEW."material" IS NULL, NULL, lower(hex(NEW."material"))), 'amount', NEW."amount"));
                 END;
CREATE TRIGGER history_material_use_update AFTER UPDATE ON material_use WHEN OLD."id" IS NOT NEW."id" OR OLD."part" IS NOT NEW."part" OR OLD."work" IS NOT NEW."work" OR OLD."material" IS NOT NEW."material" OR OLD."amount" IS NOT NEW."amount" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'material_use', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'part', iif(OLD."part" IS NULL, NULL, lower(hex(OLD."part"))), 'work', iif(OLD."work" IS NULL, NULL, lower(hex(OLD."work"))), 'material', iif(OLD."material" IS NULL, NULL, lower(hex(OLD."material"))), 'amount', OLD."amount"), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'part', iif(NEW."part" IS NULL, NULL, lower(hex(NEW."part"))), 'work', iif(NEW."work" IS NULL, NULL, lower(hex(NEW."work"))), 'material', iif(NEW."material" IS NULL, NULL, lower(hex(NEW."material"))), 'amount', NEW."amount"));
                 END;
CREATE TRIGGER history_material_use_delete AFTER DELETE ON material_use  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'material_use', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'part', iif(OLD."part" IS NULL, NULL, lower(hex(OLD."part"))), 'work', iif(OLD."work" IS NULL, NULL, lower(hex(OLD."work"))), 'material', iif(OLD."material" IS NULL, NULL, lower(hex(OLD."material"))), 'amount', OLD."amount"), NULL);
                 END;
CREATE TRIGGER history_look_insert AFTER INSERT ON look  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'look', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'finding', iif(NEW."finding" IS NULL, NULL, lower(hex(NEW."finding"))), 'looked_on', NEW."looked_on", 'looked_sequence', NEW."looked_sequence", 'state', NEW."state", 'severity', NEW."severity", 'share_percent', NEW."share_percent", 'again_by', NEW."again_by", 'reason', NEW."reason", 'survey', iif(NEW."survey" IS NULL, NULL, lower(hex(NEW."survey"))), 'work', iif(NEW."work" IS NULL, NULL, lower(hex(NEW."work"))), 'who', NEW."who"));
                 END;
CREATE TRIGGER history_look_update AFTER UPDATE ON look WHEN OLD."id" IS NOT NEW."id" OR OLD."finding" IS NOT NEW."finding" OR OLD."looked_on" IS NOT NEW."looked_on" OR OLD."looked_sequence" IS NOT NEW."looked_sequence" OR OLD."state" IS NOT NEW."state" OR OLD."severity" IS NOT NEW."severity" OR OLD."share_percent" IS NOT NEW."share_percent" OR OLD."again_by" IS NOT NEW."again_by" OR OLD."reason" IS NOT NEW."reason" OR OLD."survey" IS NOT NEW."survey" OR OLD."work" IS NOT NEW."work" OR OLD."who" IS NOT NEW."who" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'look', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'finding', iif(OLD."finding" IS NULL, NULL, lower(hex(OLD."finding"))), 'looked_on', OLD."looked_on", 'looked_sequence', OLD."looked_sequence", 'state', OLD."state", 'severity', OLD."severity", 'share_percent', OLD."share_percent", 'again_by', OLD."again_by", 'reason', OLD."reason", 'survey', iif(OLD."survey" IS NULL, NULL, lower(hex(OLD."survey"))), 'work', iif(OLD."work" IS NULL, NULL, lower(hex(OLD."work"))), 'who', OLD."who"), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'finding', iif(NEW."finding" IS NULL, NULL, lower(hex(NEW."finding"))), 'looked_on', NEW."looked_on", 'looked_sequence', NEW."looked_sequence", 'state', NEW."state", 'severity', NEW."severity", 'share_percent', NEW."share_percent", 'again_by', NEW."again_by", 'reason', NEW."reason", 'survey', iif(NEW."survey" IS NULL, NULL, lower(hex(NEW."survey"))), 'work', iif(NEW."work" IS NULL, NULL, lower(hex(NEW."work"))), 'who', NEW."who"));
                 END;
CREATE TRIGGER history_look_delete AFTER DELETE ON look  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'look', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'finding', iif(OLD."finding" IS NULL, NULL, lower(hex(OLD."finding"))), 'looked_on', OLD."looked_on", 'looked_sequence', OLD."looked_sequence", 'state', OLD."state", 'severity', OLD."severity", 'share_percent', OLD."share_percent", 'again_by', OLD."again_by", 'reason', OLD."reason", 'survey', iif(OLD."survey" IS NULL, NULL, lower(hex(OLD."survey"))), 'work', iif(OLD."work" IS NULL, NULL, lower(hex(OLD."work"))), 'who', OLD."who"), NULL);
                 END;
CREATE TRIGGER history_capacitor_insert AFTER INSERT ON capacitor  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'capacitor', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'part', iif(NEW."part" IS NULL, NULL, lower(hex(NEW."part"))), 'designator', NEW."designator", 'place_on_part', NEW."place_on_part", 'capacitance_uf', NEW."capacitance_uf", 'voltage_v', NEW."voltage_v", 'temperature_c', NEW."temperature_c", 'diameter_mm', NEW."diameter_mm", 'height_mm', NEW."height_mm", 'pitch_mm', NEW."pitch_mm", 'dielectric', NEW."dielectric", 'mounting', NEW."mounting", 'series', NEW."series", 'polarity', NEW."polarity", 'logged_on', NEW."logged_on", 'logged_sequence', NEW."logged_sequence", 'state', NEW."state", 'function', NEW."function", 'low_esr', NEW."low_esr"));
                 END;
CREATE TRIGGER history_capacitor_update AFTER UPDATE ON capacitor WHEN OLD."id" IS NOT NEW."id" OR OLD."part" IS NOT NEW."part" OR OLD."designator" IS NOT NEW."designator" OR OLD."place_on_part" IS NOT NEW."place_on_part" OR OLD."capacitance_uf" IS NOT NEW."capacitance_uf" OR OLD."voltage_v" IS NOT NEW."voltage_v" OR OLD."temperature_c" IS NOT NEW."temperature_c" OR OLD."diameter_mm" IS NOT NEW."diameter_mm" OR OLD."height_mm" IS NOT NEW."height_mm" OR OLD."pitch_mm" IS NOT NEW."pitch_mm" OR OLD."dielectric" IS NOT NEW."dielectric" OR OLD."mounting" IS NOT NEW."mounting" OR OLD."series" IS NOT NEW."series" OR OLD."polarity" IS NOT NEW."polarity" OR OLD."logged_on" IS NOT NEW."logged_on" OR OLD."logged_sequence" IS NOT NEW."logged_sequence" OR OLD."state" IS NOT NEW."state" OR OLD."function" IS NOT NEW."function" OR OLD."low_esr" IS NOT NEW."low_esr" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'capacitor', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'part', iif(OLD."part" IS NULL, NULL, lower(hex(OLD."part"))), 'designator', OLD."designator", 'place_on_part', OLD."place_on_part", 'capacitance_uf', OLD."capacitance_uf", 'voltage_v', OLD."voltage_v", 'temperature_c', OLD."temperature_c", 'diameter_mm', OLD."diameter_mm", 'height_mm', OLD."height_mm", 'pitch_mm', OLD."pitch_mm", 'dielectric', OLD."dielectric", 'mounting', OLD."mounting", 'series', OLD."series", 'polarity', OLD."polarity", 'logged_on', OLD."logged_on", 'logged_sequence', OLD."logged_sequence", 'state', OLD."state", 'function', OLD."function", 'low_esr', OLD."low_esr"), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'part', iif(NEW."part" IS NULL, NULL, lower(hex(NEW."part"))), 'designator', NEW."designator", 'place_on_part', NEW."place_on_part", 'capacitance_uf', NEW."capacitance_uf", 'voltage_v', NEW."voltage_v", 'temperature_c', NEW."temperature_c", 'diameter_mm', NEW."diameter_mm", 'height_mm', NEW."height_mm", 'pitch_mm', NEW."pitch_mm", 'dielectric', NEW."dielectric", 'mounting', NEW."mounting", 'series', NEW."series", 'polarity', NEW."polarity", 'logged_on', NEW."logged_on", 'logged_sequence', NEW."logged_sequence", 'state', NEW."state", 'function', NEW."function", 'low_esr', NEW."low_esr"));
                 END;
CREATE TRIGGER history_capacitor_delete AFTER DELETE ON capacitor  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'capacitor', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'part', iif(OLD."part" IS NULL, NULL, lower(hex(OLD."part"))), 'designator', OLD."designator", 'place_on_part', OLD."place_on_part", 'capacitance_uf', OLD."capacitance_uf", 'voltage_v', OLD."voltage_v", 'temperature_c', OLD."temperature_c", 'diameter_mm', OLD."diameter_mm", 'height_mm', OLD."height_mm", 'pitch_mm', OLD."pitch_mm", 'dielectric', OLD."dielectric", 'mounting', OLD."mounting", 'series', OLD."series", 'polarity', OLD."polarity", 'logged_on', OLD."logged_on", 'logged_sequence', OLD."logged_sequence", 'state', OLD."state", 'function', OLD."function", 'low_esr', OLD."low_esr"), NULL);
                 END;
CREATE TRIGGER history_capacitor_look_insert AFTER INSERT ON capacitor_look  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'capacitor_look', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'capacitor', iif(NEW."capacitor" IS NULL, NULL, lower(hex(NEW."capacitor"))), 'looked_on', NEW."looked_on", 'looked_sequence', NEW."looked_sequence", 'state', NEW."state", 'measured_uf', NEW."measured_uf", 'esr_mohm', NEW."esr_mohm", 'leakage_ua', NEW."leakage_ua", 'replaced_by', NEW."replaced_by", 'note', NEW."note"));
                 END;
CREATE TRIGGER history_capacitor_look_update AFTER UPDATE ON capacitor_look WHEN OLD."id" IS NOT NEW."id" OR OLD."capacitor" IS NOT NEW."capacitor" OR OLD."looked_on" IS NOT NEW."looked_on" OR OLD."looked_sequence" IS NOT NEW."looked_sequence" OR OLD."state" IS NOT NEW."state" OR OLD."measured_uf" IS NOT NEW."measured_uf" OR OLD."esr_mohm" IS NOT NEW."esr_mohm" OR OLD."leakage_ua" IS NOT NEW."leakage_ua" OR OLD."replaced_by" IS NOT NEW."replaced_by" OR OLD."note" IS NOT NEW."note" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'capacitor_look', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'capacitor', iif(OLD."capacitor" IS NULL, NULL, lower(hex(OLD."capacitor"))), 'looked_on', OLD."looked_on", 'looked_sequence', OLD."looked_sequence", 'state', OLD."state", 'measured_uf', OLD."measured_uf", 'esr_mohm', OLD."esr_mohm", 'leakage_ua', OLD."leakage_ua", 'replaced_by', OLD."replaced_by", 'note', OLD."note"), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'capacitor', iif(NEW."capacitor" IS NULL, NULL, lower(hex(NEW."capacitor"))), 'looked_on', NEW."looked_on", 'looked_sequence', NEW."looked_sequence", 'state', NEW."state", 'measured_uf', NEW."measured_uf", 'esr_mohm', NEW."esr_mohm", 'leakage_ua', NEW."leakage_ua", 'replaced_by', NEW."replaced_by", 'note', NEW."note"));
                 END;
CREATE TRIGGER history_capacitor_look_delete AFTER DELETE ON capacitor_look  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'capacitor_look', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'capacitor', iif(OLD."capacitor" IS NULL, NULL, lower(hex(OLD."capacitor"))), 'looked_on', OLD."looked_on", 'looked_sequence', OLD."looked_sequence", 'state', OLD."state", 'measured_uf', OLD."measured_uf", 'esr_mohm', OLD."esr_mohm", 'leakage_ua', OLD."leakage_ua", 'replaced_by', OLD."replaced_by", 'note', OLD."note"), NULL);
                 END;
CREATE TRIGGER history_kit_insert AFTER INSERT ON kit  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'kit', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'name', NEW."name", 'scope', NEW."scope", 'state', NEW."state", 'changed_on', NEW."changed_on", 'changed_sequence', NEW."changed_sequence", 'frozen', NEW."frozen", 'ordered', NEW."ordered", 'received', NEW."received", 'used', NEW."used", 'note', NEW."note"));
                 END;
CREATE TRIGGER history_kit_update AFTER UPDATE ON kit WHEN OLD."id" IS NOT NEW."id" OR OLD."name" IS NOT NEW."name" OR OLD."scope" IS NOT NEW."scope" OR OLD."state" IS NOT NEW."state" OR OLD."changed_on" IS NOT NEW."changed_on" OR OLD."changed_sequence" IS NOT NEW."changed_sequence" OR OLD."frozen" IS NOT NEW."frozen" OR OLD."ordered" IS NOT NEW."ordered" OR OLD."received" IS NOT NEW."received" OR OLD."used" IS NOT NEW."used" OR OLD."note" IS NOT NEW."note" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'kit', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'name', OLD."name", 'scope', OLD."scope", 'state', OLD."state", 'changed_on', OLD."changed_on", 'changed_sequence', OLD."changed_sequence", 'frozen', OLD."frozen", 'ordered', OLD."ordered", 'received', OLD."received", 'used', OLD."used", 'note', OLD."note"), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'name', NEW."name", 'scope', NEW."scope", 'state', NEW."state", 'changed_on', NEW."changed_on", 'changed_sequence', NEW."changed_sequence", 'frozen', NEW."frozen", 'ordered', NEW."ordered", 'received', NEW."received", 'used', NEW."used", 'note', NEW."note"));
                 END;
CREATE TRIGGER history_kit_delete AFTER DELETE ON kit  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'kit', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'name', OLD."name", 'scope', OLD."scope", 'state', OLD."state", 'changed_on', OLD."changed_on", 'changed_sequence', OLD."changed_sequence", 'frozen', OLD."frozen", 'ordered', OLD."ordered", 'received', OLD."received", 'used', OLD."used", 'note', OLD."note"), NULL);
                 END;
CREATE TRIGGER history_kit_line_insert AFTER INSERT ON kit_line  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'kit_line', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'kit', iif(NEW."kit" IS NULL, NULL, lower(hex(NEW."kit"))), 'material', iif(NEW."material" IS NULL, NULL, lower(hex(NEW."material"))), 'capacitance_uf', NEW."capacitance_uf", 'voltage_v', NEW."voltage_v", 'temperature_c', NEW."temperature_c", 'diameter_mm', NEW."diameter_mm", 'height_mm', NEW."height_mm", 'pitch_mm', NEW."pitch_mm", 'dielectric', NEW."dielectric", 'mounting', NEW."mounting", 'low_esr', NEW."low_esr", 'from_stock', NEW."from_stock", 'to_buy', NEW."to_buy", 'spares', NEW."spares", 'price_cents', NEW."price_cents", 'supplier', NEW."supplier", 'note', NEW."note"));
                 END;
CREATE TRIGGER history_kit_line_update AFTER UPDATE ON kit_line WHEN OLD."id" IS NOT NEW."id" OR OLD."kit" IS NOT NEW."kit" OR OLD."material" IS NOT NEW."material" OR OLD."capacitance_uf" IS NOT NEW."capacitance_uf" OR OLD."voltage_v" IS NOT NEW."voltage_v" OR OLD."temperature_c" IS NOT NEW."temperature_c" OR OLD."diameter_mm" IS NOT NEW."diameter_mm" OR OLD."height_mm" IS NOT NEW."height_mm" OR OLD."pitch_mm" IS NOT NEW."pitch_mm" OR OLD."dielectric" IS NOT NEW."dielectric" OR OLD."mounting" IS NOT NEW."mounting" OR OLD."low_esr" IS NOT NEW."low_esr" OR OLD."from_stock" IS NOT NEW."from_stock" OR OLD."to_buy" IS NOT NEW."to_buy" OR OLD."spares" IS NOT NEW."spares" OR OLD."price_cents" IS NOT NEW."price_cents" OR OLD."supplier" IS NOT NEW."supplier" OR OLD."note" IS NOT NEW."note" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'kit_line', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'kit', iif(OLD."kit" IS NULL, NULL, lower(hex(OLD."kit"))), 'material', iif(OLD."material" IS NULL, NULL, lower(hex(OLD."material"))), 'capacitance_uf', OLD."capacitance_uf", 'voltage_v', OLD."voltage_v", 'temperature_c', OLD."temperature_c", 'diameter_mm', OLD."diameter_mm", 'height_mm', OLD."height_mm", 'pitch_mm', OLD."pitch_mm", 'dielectric', OLD."dielectric", 'mounting', OLD."mounting", 'low_esr', OLD."low_esr", 'from_stock', OLD."from_stock", 'to_buy', OLD."to_buy", 'spares', OLD."spares", 'price_cents', OLD."price_cents", 'supplier', OLD."supplier", 'note', OLD."note"), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'kit', iif(NEW."kit" IS NULL, NULL, lower(hex(NEW."kit"))), 'material', iif(NEW."material" IS NULL, NULL, lower(hex(NEW."material"))), 'capacitance_uf', NEW."capacitance_uf", 'voltage_v', NEW."voltage_v", 'temperature_c', NEW."temperature_c", 'diameter_mm', NEW."diameter_mm", 'height_mm', NEW."height_mm", 'pitch_mm', NEW."pitch_mm", 'dielectric', NEW."dielectric", 'mounting', NEW."mounting", 'low_esr', NEW."low_esr", 'from_stock', NEW."from_stock", 'to_buy', NEW."to_buy", 'spares', NEW."spares", 'price_cents', NEW."price_cents", 'supplier', NEW."supplier", 'note', NEW."note"));
                 END;
CREATE TRIGGER history_kit_line_delete AFTER DELETE ON kit_line  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'kit_line', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'kit', iif(OLD."kit" IS NULL, NULL, lower(hex(OLD."kit"))), 'material', iif(OLD."material" IS NULL, NULL, lower(hex(OLD."material"))), 'capacitance_uf', OLD."capacitance_uf", 'voltage_v', OLD."voltage_v", 'temperature_c', OLD."temperature_c", 'diameter_mm', OLD."diameter_mm", 'height_mm', OLD."height_mm", 'pitch_mm', OLD."pitch_mm", 'dielectric', OLD."dielectric", 'mounting', OLD."mounting", 'low_esr', OLD."low_esr", 'from_stock', OLD."from_stock", 'to_buy', OLD."to_buy", 'spares', OLD."spares", 'price_cents', OLD."price_cents", 'supplier', OLD."supplier", 'note', OLD."note"), NULL);
                 END;
CREATE TRIGGER history_kit_position_insert AFTER INSERT ON kit_position  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'kit_position', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'line', iif(NEW."line" IS NULL, NULL, lower(hex(NEW."line"))), 'capacitor', iif(NEW."capacitor" IS NULL, NULL, lower(hex(NEW."capacitor")))));
                 END;
CREATE TRIGGER history_kit_position_update AFTER UPDATE ON kit_position WHEN OLD."id" IS NOT NEW."id" OR OLD."line" IS NOT NEW."line" OR OLD."capacitor" IS NOT NEW."capacitor" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'kit_position', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'line', iif(OLD."line" IS NULL, NULL, lower(hex(OLD."line"))), 'capacitor', iif(OLD."capacitor" IS NULL, NULL, lower(hex(OLD."capacitor")))), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'line', iif(NEW."line" IS NULL, NULL, lower(hex(NEW."line"))), 'capacitor', iif(NEW."capacitor" IS NULL, NULL, lower(hex(NEW."capacitor")))));
                 END;
CREATE TRIGGER history_kit_position_delete AFTER DELETE ON kit_position  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'kit_position', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'line', iif(OLD."line" IS NULL, NULL, lower(hex(OLD."line"))), 'capacitor', iif(OLD."capacitor" IS NULL, NULL, lower(hex(OLD."capacitor")))), NULL);
                 END;
CREATE TRIGGER history_proof_insert AFTER INSERT ON proof  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'proof', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'part', iif(NEW."part" IS NULL, NULL, lower(hex(NEW."part"))), 'machine', iif(NEW."machine" IS NULL, NULL, lower(hex(NEW."machine"))), 'test', NEW."test", 'run_on', NEW."run_on", 'run_sequence', NEW."run_sequence", 'rig', NEW."rig", 'minutes', NEW."minutes", 'criterion', NEW."criterion", 'result', NEW."result", 'who', NEW."who", 'note', NEW."note"));
                 END;
CREATE TRIGGER history_proof_update AFTER UPDATE ON proof WHEN OLD."id" IS NOT NEW."id" OR OLD."part" IS NOT NEW."part" OR OLD."machine" IS NOT NEW."machine" OR OLD."test" IS NOT NEW."test" OR OLD."run_on" IS NOT NEW."run_on" OR OLD."run_sequence" IS NOT NEW."run_sequence" OR OLD."rig" IS NOT NEW."rig" OR OLD."minutes" IS NOT NEW."minutes" OR OLD."criterion" IS NOT NEW."criterion" OR OLD."result" IS NOT NEW."result" OR OLD."who" IS NOT NEW."who" OR OLD."note" IS NOT NEW."note" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'proof', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'part', iif(OLD."part" IS NULL, NULL, lower(hex(OLD."part"))), 'machine', iif(OLD."machine" IS NULL, NULL, lower(hex(OLD."machine"))), 'test', OLD."test", 'run_on', OLD."run_on", 'run_sequence', OLD."run_sequence", 'rig', OLD."rig", 'minutes', OLD."minutes", 'criterion', OLD."criterion", 'result', OLD."result", 'who', OLD."who", 'note', OLD."note"), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'part', iif(NEW."part" IS NULL, NULL, lower(hex(NEW."part"))), 'machine', iif(NEW."machine" IS NULL, NULL, lower(hex(NEW."machine"))), 'test', NEW."test", 'run_on', NEW."run_on", 'run_sequence', NEW."run_sequence", 'rig', NEW."rig", 'minutes', NEW."minutes", 'criterion', NEW."criterion", 'result', NEW."result", 'who', NEW."who", 'note', NEW."note"));
                 END;
CREATE TRIGGER history_proof_delete AFTER DELETE ON proof  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'proof', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'part', iif(OLD."part" IS NULL, NULL, lower(hex(OLD."part"))), 'machine', iif(OLD."machine" IS NULL, NULL, lower(hex(OLD."machine"))), 'test', OLD."test", 'run_on', OLD."run_on", 'run_sequence', OLD."run_sequence", 'rig', OLD."rig", 'minutes', OLD."minutes", 'criterion', OLD."criterion", 'result', OLD."result", 'who', OLD."who", 'note', OLD."note"), NULL);
                 END;
CREATE TRIGGER history_reading_insert AFTER INSERT ON reading  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'reading', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'part', iif(NEW."part" IS NULL, NULL, lower(hex(NEW."part"))), 'machine', iif(NEW."machine" IS NULL, NULL, lower(hex(NEW."machine"))), 'measured_on', NEW."measured_on", 'measured_sequence', NEW."measured_sequence", 'quantity', NEW."quantity", 'value', NEW."value", 'unit', NEW."unit", 'condition', NEW."condition", 'who', NEW."who", 'supersedes', iif(NEW."supersedes" IS NULL, NULL, lower(hex(NEW."supersedes"))), 'note', NEW."note", 'proof', iif(NEW."proof" IS NULL, NULL, lower(hex(NEW."proof"))), 'work', iif(NEW."work" IS NULL, NULL, lower(hex(NEW."work")))));
                 END;
CREATE TRIGGER history_reading_update AFTER UPDATE ON reading WHEN OLD."id" IS NOT NEW."id" OR OLD."part" IS NOT NEW."part" OR OLD."machine" IS NOT NEW."machine" OR OLD."measured_on" IS NOT NEW."measured_on" OR OLD."measured_sequence" IS NOT NEW."measured_sequence" OR OLD."quantity" IS NOT NEW."quantity" OR OLD."value" IS NOT NEW."value" OR OLD."unit" IS NOT NEW."unit" OR OLD."condition" IS NOT NEW."condition" OR OLD."who" IS NOT NEW."who" OR OLD."supersedes" IS NOT NEW."supersedes" OR OLD."note" IS NOT NEW."note" OR OLD."proof" IS NOT NEW."proof" OR OLD."work" IS NOT NEW."work" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'reading', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'part', iif(OLD."part" IS NULL, NULL, lower(hex(OLD."part"))), 'machine', iif(OLD."machine" IS NULL, NULL, lower(hex(OLD."machine"))), 'measured_on', OLD."measured_on", 'measured_sequence', OLD."measured_sequence", 'quantity', OLD."quantity", 'value', OLD."value", 'unit', OLD."unit", 'condition', OLD."condition", 'who', OLD."who", 'supersedes', iif(OLD."supersedes" IS NULL, NULL, lower(hex(OLD."supersedes"))), 'note', OLD."note", 'proof', iif(OLD."proof" IS NULL, NULL, lower(hex(OLD."proof"))), 'work', iif(OLD."work" IS NULL, NULL, lower(hex(OLD."work")))), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'part', iif(NEW."part" IS NULL, NULL, lower(hex(NEW."part"))), 'machine', iif(NEW."machine" IS NULL, NULL, lower(hex(NEW."machine"))), 'measured_on', NEW."measured_on", 'measured_sequence', NEW."measured_sequence", 'quantity', NEW."quantity", 'value', NEW."value", 'unit', NEW."unit", 'condition', NEW."condition", 'who', NEW."who", 'supersedes', iif(NEW."supersedes" IS NULL, NULL, lower(hex(NEW."supersedes"))), 'note', NEW."note", 'proof', iif(NEW."proof" IS NULL, NULL, lower(hex(NEW."proof"))), 'work', iif(NEW."work" IS NULL, NULL, lower(hex(NEW."work")))));
                 END;
CREATE TRIGGER history_reading_delete AFTER DELETE ON reading  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'reading', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'part', iif(OLD."part" IS NULL, NULL, lower(hex(OLD."part"))), 'machine', iif(OLD."machine" IS NULL, NULL, lower(hex(OLD."machine"))), 'measured_on', OLD."measured_on", 'measured_sequence', OLD."measured_sequence", 'quantity', OLD."quantity", 'value', OLD."value", 'unit', OLD."unit", 'condition', OLD."condition", 'who', OLD."who", 'supersedes', iif(OLD."supersedes" IS NULL, NULL, lower(hex(OLD."supersedes"))), 'note', OLD."note", 'proof', iif(OLD."proof" IS NULL, NULL, lower(hex(OLD."proof"))), 'work', iif(OLD."work" IS NULL, NULL, lower(hex(OLD."work")))), NULL);
                 END;
CREATE TRIGGER history_setting_insert AFTER INSERT ON setting  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'setting', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'part', iif(NEW."part" IS NULL, NULL, lower(hex(NEW."part"))), 'found_on', NEW."found_on", 'found_sequence', NEW."found_sequence", 'name', NEW."name", 'value', NEW."value", 'source', NEW."source"));
                 END;
CREATE TRIGGER history_setting_update AFTER UPDATE ON setting WHEN OLD."id" IS NOT NEW."id" OR OLD."part" IS NOT NEW."part" OR OLD."found_on" IS NOT NEW."found_on" OR OLD."found_sequence" IS NOT NEW."found_sequence" OR OLD."name" IS NOT NEW."name" OR OLD."value" IS NOT NEW."value" OR OLD."source" IS NOT NEW."source" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'setting', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'part', iif(OLD."part" IS NULL, NULL, lower(hex(OLD."part"))), 'found_on', OLD."found_on", 'found_sequence', OLD."found_sequence", 'name', OLD."name", 'value', OLD."value", 'source', OLD."source"), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'part', iif(NEW."part" IS NULL, NULL, lower(hex(NEW."part"))), 'found_on', NEW."found_on", 'found_sequence', NEW."found_sequence", 'name', NEW."name", 'value', NEW."value", 'source', NEW."source"));
                 END;
CREATE TRIGGER history_setting_delete AFTER DELETE ON setting  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'setting', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'part', iif(OLD."part" IS NULL, NULL, lower(hex(OLD."part"))), 'found_on', OLD."found_on", 'found_sequence', OLD."found_sequence", 'name', OLD."name", 'value', OLD."value", 'source', OLD."source"), NULL);
                 END;
CREATE TRIGGER history_fault_case_insert AFTER INSERT ON fault_case  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'fault_case', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'part', iif(NEW."part" IS NULL, NULL, lower(hex(NEW."part"))), 'machine', iif(NEW."machine" IS NULL, NULL, lower(hex(NEW."machine"))), 'opened_on', NEW."opened_on", 'opened_sequence', NEW."opened_sequence", 'symptom', NEW."symptom", 'state', NEW."state", 'outcome', NEW."outcome"));
                 END;
CREATE TRIGGER history_fault_case_update AFTER UPDATE ON fault_case WHEN OLD."id" IS NOT NEW."id" OR OLD."part" IS NOT NEW."part" OR OLD."machine" IS NOT NEW."machine" OR OLD."opened_on" IS NOT NEW."opened_on" OR OLD."opened_sequence" IS NOT NEW."opened_sequence" OR OLD."symptom" IS NOT NEW."symptom" OR OLD."state" IS NOT NEW."state" OR OLD."outcome" IS NOT NEW."outcome" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'fault_case', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'part', iif(OLD."part" IS NULL, NULL, lower(hex(OLD."part"))), 'machine', iif(OLD."machine" IS NULL, NULL, lower(hex(OLD."machine"))), 'opened_on', OLD."opened_on", 'opened_sequence', OLD."opened_sequence", 'symptom', OLD."symptom", 'state', OLD."state", 'outcome', OLD."outcome"), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'part', iif(NEW."part" IS NULL, NULL, lower(hex(NEW."part"))), 'machine', iif(NEW."machine" IS NULL, NULL, lower(hex(NEW."machine"))), 'opened_on', NEW."opened_on", 'opened_sequence', NEW."opened_sequence", 'symptom', NEW."symptom", 'state', NEW."state", 'outcome', NEW."outcome"));
                 END;
CREATE TRIGGER history_fault_case_delete AFTER DELETE ON fault_case  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'fault_case', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'part', iif(OLD."part" IS NULL, NULL, lower(hex(OLD."part"))), 'machine', iif(OLD."machine" IS NULL, NULL, lower(hex(OLD."machine"))), 'opened_on', OLD."opened_on", 'opened_sequence', OLD."opened_sequence", 'symptom', OLD."symptom", 'state', OLD."state", 'outcome', OLD."outcome"), NULL);
                 END;
CREATE TRIGGER history_trial_insert AFTER INSERT ON trial  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'trial', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'case', iif(NEW."case" IS NULL, NULL, lower(hex(NEW."case"))), 'tried_on', NEW."tried_on", 'tried_sequence', NEW."tried_sequence", 'configuration', NEW."configuration", 'step', NEW."step", 'suspect', iif(NEW."suspect" IS NULL, NULL, lower(hex(NEW."suspect"))), 'known_good', iif(NEW."known_good" IS NULL, NULL, lower(hex(NEW."known_good"))), 'result', NEW."result", 'note', NEW."note", 'codes', NEW."codes"));
                 END;
CREATE TRIGGER history_trial_update AFTER UPDATE ON trial WHEN OLD."id" IS NOT NEW."id" OR OLD."case" IS NOT NEW."case" OR OLD."tried_on" IS NOT NEW."tried_on" OR OLD."tried_sequence" IS NOT NEW."tried_sequence" OR OLD."configuration" IS NOT NEW."configuration" OR OLD."step" IS NOT NEW."step" OR OLD."suspect" IS NOT NEW."suspect" OR OLD."known_good" IS NOT NEW."known_good" OR OLD."result" IS NOT NEW."result" OR OLD."note" IS NOT NEW."note" OR OLD."codes" IS NOT NEW."codes" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'trial', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'case', iif(OLD."case" IS NULL, NULL, lower(hex(OLD."case"))), 'tried_on', OLD."tried_on", 'tried_sequence', OLD."tried_sequence", 'configuration', OLD."configuration", 'step', OLD."step", 'suspect', iif(OLD."suspect" IS NULL, NULL, lower(hex(OLD."suspect"))), 'known_good', iif(OLD."known_good" IS NULL, NULL, lower(hex(OLD."known_good"))), 'result', OLD."result", 'note', OLD."note", 'codes', OLD."codes"), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'case', iif(NEW."case" IS NULL, NULL, lower(hex(NEW."case"))), 'tried_on', NEW."tried_on", 'tried_sequence', NEW."tried_sequence", 'configuration', NEW."configuration", 'step', NEW."step", 'suspect', iif(NEW."suspect" IS NULL, NULL, lower(hex(NEW."suspect"))), 'known_good', iif(NEW."known_good" IS NULL, NULL, lower(hex(NEW."known_good"))), 'result', NEW."result", 'note', NEW."note", 'codes', NEW."codes"));
                 END;
CREATE TRIGGER history_trial_delete AFTER DELETE ON trial  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'trial', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'case', iif(OLD."case" IS NULL, NULL, lower(hex(OLD."case"))), 'tried_on', OLD."tried_on", 'tried_sequence', OLD."tried_sequence", 'configuration', OLD."configuration", 'step', OLD."step", 'suspect', iif(OLD."suspect" IS NULL, NULL, lower(hex(OLD."suspect"))), 'known_good', iif(OLD."known_good" IS NULL, NULL, lower(hex(OLD."known_good"))), 'result', OLD."result", 'note', OLD."note", 'codes', OLD."codes"), NULL);
                 END;
CREATE TRIGGER history_custody_event_insert AFTER INSERT ON custody_event  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'custody_event', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'part', iif(NEW."part" IS NULL, NULL, lower(hex(NEW."part"))), 'happened_on', NEW."happened_on", 'happened_sequence', NEW."happened_sequence", 'act', NEW."act", 'party', NEW."party", 'until', NEW."until", 'price_cents', NEW."price_cents", 'condition', NEW."condition", 'note', NEW."note"));
                 END;
CREATE TRIGGER history_custody_event_update AFTER UPDATE ON custody_event WHEN OLD."id" IS NOT NEW."id" OR OLD."part" IS NOT NEW."part" OR OLD."happened_on" IS NOT NEW."happened_on" OR OLD."happened_sequence" IS NOT NEW."happened_sequence" OR OLD."act" IS NOT NEW."act" OR OLD."party" IS NOT NEW."party" OR OLD."until" IS NOT NEW."until" OR OLD."price_cents" IS NOT NEW."price_cents" OR OLD."condition" IS NOT NEW."condition" OR OLD."note" IS NOT NEW."note" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'custody_event', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'part', iif(OLD."part" IS NULL, NULL, lower(hex(OLD."part"))), 'happened_on', OLD."happened_on", 'happened_sequence', OLD."happened_sequence", 'act', OLD."act", 'party', OLD."party", 'until', OLD."until", 'price_cents', OLD."price_cents", 'condition', OLD."condition", 'note', OLD."note"), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'part', iif(NEW."part" IS NULL, NULL, lower(hex(NEW."part"))), 'happened_on', NEW."happened_on", 'happened_sequence', NEW."happened_sequence", 'act', NEW."act", 'party', NEW."party", 'until', NEW."until", 'price_cents', NEW."price_cents", 'condition', NEW."condition", 'note', NEW."note"));
                 END;
CREATE TRIGGER history_custody_event_delete AFTER DELETE ON custody_event  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'custody_event', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'part', iif(OLD."part" IS NULL, NULL, lower(hex(OLD."part"))), 'happened_on', OLD."happened_on", 'happened_sequence', OLD."happened_sequence", 'act', OLD."act", 'party', OLD."party", 'until', OLD."until", 'price_cents', OLD."price_cents", 'condition', OLD."condition", 'note', OLD."note"), NULL);
                 END;
CREATE TRIGGER history_valuation_insert AFTER INSERT ON valuation  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'valuation', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'part', iif(NEW."part" IS NULL, NULL, lower(hex(NEW."part"))), 'on', NEW."on", 'amount_cents', NEW."amount_cents", 'basis', NEW."basis"));
                 END;
CREATE TRIGGER history_valuation_update AFTER UPDATE ON valuation WHEN OLD."id" IS NOT NEW."id" OR OLD."part" IS NOT NEW."part" OR OLD."on" IS NOT NEW."on" OR OLD."amount_cents" IS NOT NEW."amount_cents" OR OLD."basis" IS NOT NEW."basis" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'valuation', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'part', iif(OLD."part" IS NULL, NULL, lower(hex(OLD."part"))), 'on', OLD."on", 'amount_cents', OLD."amount_cents", 'basis', OLD."basis"), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'part', iif(NEW."part" IS NULL, NULL, lower(hex(NEW."part"))), 'on', NEW."on", 'amount_cents', NEW."amount_cents", 'basis', NEW."basis"));
                 END;
CREATE TRIGGER history_valuation_delete AFTER DELETE ON valuation  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'valuation', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'part', iif(OLD."part" IS NULL, NULL, lower(hex(OLD."part"))), 'on', OLD."on", 'amount_cents', OLD."amount_cents", 'basis', OLD."basis"), NULL);
                 END;
CREATE TRIGGER history_photo_insert AFTER INSERT ON photo  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'photo', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'part', iif(NEW."part" IS NULL, NULL, lower(hex(NEW."part"))), 'machine', iif(NEW."machine" IS NULL, NULL, lower(hex(NEW."machine"))), 'lot', iif(NEW."lot" IS NULL, NULL, lower(hex(NEW."lot"))), 'content', NEW."content", 'extension', NEW."extension", 'width_px', NEW."width_px", 'height_px', NEW."height_px", 'added_on', NEW."added_on", 'added_sequence', NEW."added_sequence", 'taken', NEW."taken", 'view', NEW."view", 'caption', NEW."caption", 'is_map', NEW."is_map"));
                 END;
CREATE TRIGGER history_photo_update AFTER UPDATE ON photo WHEN OLD."id" IS NOT NEW."id" OR OLD."part" IS NOT NEW."part" OR OLD."machine" IS NOT NEW."machine" OR OLD."lot" IS NOT NEW."lot" OR OLD."content" IS NOT NEW."content" OR OLD."extension" IS NOT NEW."extension" OR OLD."width_px" IS NOT NEW."width_px" OR OLD."height_px" IS NOT NEW."height_px" OR OLD."added_on" IS NOT NEW."added_on" OR OLD."added_sequence" IS NOT NEW."added_sequence" OR OLD."taken" IS NOT NEW."taken" OR OLD."view" IS NOT NEW."view" OR OLD."caption" IS NOT NEW."caption" OR OLD."is_map" IS NOT NEW."is_map" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'photo', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'part', iif(OLD."part" IS NULL, NULL, lower(hex(OLD."part"))), 'machine', iif(OLD."machine" IS NULL, NULL, lower(hex(OLD."machine"))), 'lot', iif(OLD."lot" IS NULL, NULL, lower(hex(OLD."lot"))), 'content', OLD."content", 'extension', OLD."extension", 'width_px', OLD."width_px", 'height_px', OLD."height_px", 'added_on', OLD."added_on", 'added_sequence', OLD."added_sequence", 'taken', OLD."taken", 'view', OLD."view", 'caption', OLD."caption", 'is_map', OLD."is_map"), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'part', iif(NEW."part" IS NULL, NULL, lower(hex(NEW."part"))), 'machine', iif(NEW."machine" IS NULL, NULL, lower(hex(NEW."machine"))), 'lot', iif(NEW."lot" IS NULL, NULL, lower(hex(NEW."lot"))), 'content', NEW."content", 'extension', NEW."extension", 'width_px', NEW."width_px", 'height_px', NEW."height_px", 'added_on', NEW."added_on", 'added_sequence', NEW."added_sequence", 'taken', NEW."taken", 'view', NEW."view", 'caption', NEW."caption", 'is_map', NEW."is_map"));
                 END;
CREATE TRIGGER history_photo_delete AFTER DELETE ON photo  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'photo', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'part', iif(OLD."part" IS NULL, NULL, lower(hex(OLD."part"))), 'machine', iif(OLD."machine" IS NULL, NULL, lower(hex(OLD."machine"))), 'lot', iif(OLD."lot" IS NULL, NULL, lower(hex(OLD."lot"))), 'content', OLD."content", 'extension', OLD."extension", 'width_px', OLD."width_px", 'height_px', OLD."height_px", 'added_on', OLD."added_on", 'added_sequence', OLD."added_sequence", 'taken', OLD."taken", 'view', OLD."view", 'caption', OLD."caption", 'is_map', OLD."is_map"), NULL);
                 END;
CREATE TRIGGER history_photo_mark_insert AFTER INSERT ON photo_mark  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'photo_mark', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'photo', iif(NEW."photo" IS NULL, NULL, lower(hex(NEW."photo"))), 'points', NEW."points", 'finding', iif(NEW."finding" IS NULL, NULL, lower(hex(NEW."finding"))), 'capacitor', iif(NEW."capacitor" IS NULL, NULL, lower(hex(NEW."capacitor"))), 'marking', iif(NEW."marking" IS NULL, NULL, lower(hex(NEW."marking"))), 'work', iif(NEW."work" IS NULL, NULL, lower(hex(NEW."work"))), 'note', NEW."note", 'role', NEW."role", 'length_mm', NEW."length_mm", 'breadth_mm', NEW."breadth_mm", 'red', NEW."red", 'green', NEW."green", 'blue', NEW."blue", 'clipped_percent', NEW."clipped_percent", 'proof', iif(NEW."proof" IS NULL, NULL, lower(hex(NEW."proof")))));
                 END;
CREATE TRIGGER history_photo_mark_update AFTER UPDATE ON photo_mark WHEN OLD."id" IS NOT NEW."id" OR OLD."photo" IS NOT NEW."photo" OR OLD."points" IS NOT NEW."points" OR OLD."finding" IS NOT NEW."finding" OR OLD."capacitor" IS NOT NEW."capacitor" OR OLD."marking" IS NOT NEW."marking" OR OLD."work" IS NOT NEW."work" OR OLD."note" IS NOT NEW."note" OR OLD."role" IS NOT NEW."role" OR OLD."length_mm" IS NOT NEW."length_mm" OR OLD."breadth_mm" IS NOT NEW."breadth_mm" OR OLD."red" IS NOT NEW."red" OR OLD."green" IS NOT NEW."green" OR OLD."blue" IS NOT NEW."blue" OR OLD."clipped_percent" IS NOT NEW."clipped_percent" OR OLD."proof" IS NOT NEW."proof" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'photo_mark', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'photo', iif(OLD."photo" IS NULL, NULL, lower(hex(OLD."photo"))), 'points', OLD."points", 'finding', iif(OLD."finding" IS NULL, NULL, lower(hex(OLD."finding"))), 'capacitor', iif(OLD."capacitor" IS NULL, NULL, lower(hex(OLD."capacitor"))), 'marking', iif(OLD."marking" IS NULL, NULL, lower(hex(OLD."marking"))), 'work', iif(OLD."work" IS NULL, NULL, lower(hex(OLD."work"))), 'note', OLD."note", 'role', OLD."role", 'length_mm', OLD."length_mm", 'breadth_mm', OLD."breadth_mm", 'red', OLD."red", 'green', OLD."green", 'blue', OLD."blue", 'clipped_percent', OLD."clipped_percent", 'proof', iif(OLD."proof" IS NULL, NULL, lower(hex(OLD."proof")))), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'photo', iif(NEW."photo" IS NULL, NULL, lower(hex(NEW."photo"))), 'points', NEW."points", 'finding', iif(NEW."finding" IS NULL, NULL, lower(hex(NEW."finding"))), 'capacitor', iif(NEW."capacitor" IS NULL, NULL, lower(hex(NEW."capacitor"))), 'marking', iif(NEW."marking" IS NULL, NULL, lower(hex(NEW."marking"))), 'work', iif(NEW."work" IS NULL, NULL, lower(hex(NEW."work"))), 'note', NEW."note", 'role', NEW."role", 'length_mm', NEW."length_mm", 'breadth_mm', NEW."breadth_mm", 'red', NEW."red", 'green', NEW."green", 'blue', NEW."blue", 'clipped_percent', NEW."clipped_percent", 'proof', iif(NEW."proof" IS NULL, NULL, lower(hex(NEW."proof")))));
                 END;
CREATE TRIGGER history_photo_mark_delete AFTER DELETE ON photo_mark  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'photo_mark', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'photo', iif(OLD."photo" IS NULL, NULL, lower(hex(OLD."photo"))), 'points', OLD."points", 'finding', iif(OLD."finding" IS NULL, NULL, lower(hex(OLD."finding"))), 'capacitor', iif(OLD."capacitor" IS NULL, NULL, lower(hex(OLD."capacitor"))), 'marking', iif(OLD."marking" IS NULL, NULL, lower(hex(OLD."marking"))), 'work', iif(OLD."work" IS NULL, NULL, lower(hex(OLD."work"))), 'note', OLD."note", 'role', OLD."role", 'length_mm', OLD."length_mm", 'breadth_mm', OLD."breadth_mm", 'red', OLD."red", 'green', OLD."green", 'blue', OLD."blue", 'clipped_percent', OLD."clipped_percent", 'proof', iif(OLD."proof" IS NULL, NULL, lower(hex(OLD."proof")))), NULL);
                 END;
CREATE TRIGGER history_attachment_insert AFTER INSERT ON attachment  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'attachment', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'part', iif(NEW."part" IS NULL, NULL, lower(hex(NEW."part"))), 'machine', iif(NEW."machine" IS NULL, NULL, lower(hex(NEW."machine"))), 'lot', iif(NEW."lot" IS NULL, NULL, lower(hex(NEW."lot"))), 'kind', NEW."kind", 'content', NEW."content", 'file_name', NEW."file_name", 'bytes', NEW."bytes", 'added_on', NEW."added_on", 'added_sequence', NEW."added_sequence", 'note', NEW."note", 'proof', iif(NEW."proof" IS NULL, NULL, lower(hex(NEW."proof")))));
                 END;
CREATE TRIGGER history_attachment_update AFTER UPDATE ON attachment WHEN OLD."id" IS NOT NEW."id" OR OLD."part" IS NOT NEW."part" OR OLD."machine" IS NOT NEW."machine" OR OLD."lot" IS NOT NEW."lot" OR OLD."kind" IS NOT NEW."kind" OR OLD."content" IS NOT NEW."content" OR OLD."file_name" IS NOT NEW."file_name" OR OLD."bytes" IS NOT NEW."bytes" OR OLD."added_on" IS NOT NEW."added_on" OR OLD."added_sequence" IS NOT NEW."added_sequence" OR OLD."note" IS NOT NEW."note" OR OLD."proof" IS NOT NEW."proof" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'attachment', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'part', iif(OLD."part" IS NULL, NULL, lower(hex(OLD."part"))), 'machine', iif(OLD."machine" IS NULL, NULL, lower(hex(OLD."machine"))), 'lot', iif(OLD."lot" IS NULL, NULL, lower(hex(OLD."lot"))), 'kind', OLD."kind", 'content', OLD."content", 'file_name', OLD."file_name", 'bytes', OLD."bytes", 'added_on', OLD."added_on", 'added_sequence', OLD."added_sequence", 'note', OLD."note", 'proof', iif(OLD."proof" IS NULL, NULL, lower(hex(OLD."proof")))), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'part', iif(NEW."part" IS NULL, NULL, lower(hex(NEW."part"))), 'machine', iif(NEW."machine" IS NULL, NULL, lower(hex(NEW."machine"))), 'lot', iif(NEW."lot" IS NULL, NULL, lower(hex(NEW."lot"))), 'kind', NEW."kind", 'content', NEW."content", 'file_name', NEW."file_name", 'bytes', NEW."bytes", 'added_on', NEW."added_on", 'added_sequence', NEW."added_sequence", 'note', NEW."note", 'proof', iif(NEW."proof" IS NULL, NULL, lower(hex(NEW."proof")))));
                 END;
CREATE TRIGGER history_attachment_delete AFTER DELETE ON attachment  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'attachment', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'part', iif(OLD."part" IS NULL, NULL, lower(hex(OLD."part"))), 'machine', iif(OLD."machine" IS NULL, NULL, lower(hex(OLD."machine"))), 'lot', iif(OLD."lot" IS NULL, NULL, lower(hex(OLD."lot"))), 'kind', OLD."kind", 'content', OLD."content", 'file_name', OLD."file_name", 'bytes', OLD."bytes", 'added_on', OLD."added_on", 'added_sequence', OLD."added_sequence", 'note', OLD."note", 'proof', iif(OLD."proof" IS NULL, NULL, lower(hex(OLD."proof")))), NULL);
                 END;
COMMIT;
PRAGMA application_id = 0x42774C62;
PRAGMA user_version = 6;
