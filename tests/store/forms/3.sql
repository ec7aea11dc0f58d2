-- A logbook as version 3 of its form wrote it, dumped by SQLite's own shell.
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
INSERT INTO change VALUES(1,'New logbook','2026-11-26T04:43:22.605Z','new',NULL,0);
INSERT INTO change VALUES(2,'Import from Lantern Street Workshop','2026-11-26T04:43:22.767Z','do',NULL,571);
INSERT INTO change VALUES(3,'Import from Lantern Street Workshop','2026-11-26T05:24:56.349Z','do',NULL,571);
CREATE TABLE history (
  step INTEGER PRIMARY KEY,
  change INTEGER NOT NULL REFERENCES change,
  record TEXT NOT NULL,
  key BLOB NOT NULL,
  old TEXT,
  new TEXT
) STRICT;
INSERT INTO history VALUES(1,1,'workshop',X'01a2162a5423739c88dcf0ca36e3ede4',NULL,'{"id":"01a2162a5423739c88dcf0ca36e3ede4","name":"z","keeper":"","currency":"EUR","note":""}');
INSERT INTO history VALUES(2,2,'workshop',X'01a2162a5423739c88dcf0ca36e3ede4','{"id":"01a2162a5423739c88dcf0ca36e3ede4","name":"z","keeper":"","currency":"EUR","note":""}',NULL);
INSERT INTO history VALUES(3,2,'workshop',X'01a21609c29574579b5555c79ab22027',NULL,'{"id":"01a21609c29574579b5555c79ab22027","name":"Lantern Street Workshop","keeper":"Ines Marlow","currency":"EUR","note":"Volunteers who prepare the exhibit “At home and at work: computers 1988 to 2002”. Seven machines have to run under visitors'' hands. This is a sample: everything in it is invented, and everything in it may be changed."}');
INSERT INTO history VALUES(4,2,'place',X'01a21609c310775a893a91ff77ae7127',NULL,'{"id":"01a21609c310775a893a91ff77ae7127","within":null,"name":"Workshop","note":"Ground floor, Lantern Street"}');
INSERT INTO history VALUES(5,2,'place',X'01a21609c310775a893a920084ff1153',NULL,'{"id":"01a21609c310775a893a920084ff1153","within":"01a21609c310775a893a91ff77ae7127","name":"Bench","note":""}');
INSERT INTO history VALUES(6,2,'place',X'01a21609c310775a893a9201d3a25fd2',NULL,'{"id":"01a21609c310775a893a9201d3a25fd2","within":"01a21609c310775a893a91ff77ae7127","name":"Shelf A","note":"Boards and cards"}');
INSERT INTO history VALUES(7,2,'place',X'01a21609c310775a893a920225aa0ee0',NULL,'{"id":"01a21609c310775a893a920225aa0ee0","within":"01a21609c310775a893a9201d3a25fd2","name":"Box A1: mainboards","note":""}');
INSERT INTO history VALUES(8,2,'place',X'01a21609c310775a893a920313ed5c2c',NULL,'{"id":"01a21609c310775a893a920313ed5c2c","within":"01a21609c310775a893a9201d3a25fd2","name":"Box A2: cards","note":""}');
INSERT INTO history VALUES(9,2,'place',X'01a21609c310775a893a920d9b3231ad',NULL,'{"id":"01a21609c310775a893a920d9b3231ad","within":null,"name":"Exhibit hall","note":""}');
INSERT INTO history VALUES(10,2,'lot',X'01a21609c310775a893a920e65b64812',NULL,'{"id":"01a21609c310775a893a920e65b64812","name":"School clearance, Marshwick Lane","acquired":"2024-09","source":"Marshwick Lane School, the caretaker","price_cents":18000,"note":"One computer room of the early nineties. All of it stood in the same cellar: what one has, the others may have."}');
INSERT INTO history VALUES(11,2,'lot',X'01a21609c310775a893a920fb6b15c9d',NULL,'{"id":"01a21609c310775a893a920fb6b15c9d","name":"Attic find, Tolver Street","acquired":"2025-04","source":"Family Ardwin","price_cents":6000,"note":"Dry attic, original boxes for some."}');
INSERT INTO history VALUES(12,2,'lot',X'01a21609c310775a893a9210c4dc9ea1',NULL,'{"id":"01a21609c310775a893a9210c4dc9ea1","name":"Swap meet, Fennhall","acquired":"2025-12","source":"Several tables","price_cents":14500,"note":""}');
INSERT INTO history VALUES(13,2,'lot',X'01a21609c310775a893a9211d8e9f219',NULL,'{"id":"01a21609c310775a893a9211d8e9f219","name":"Harbour office clear-out","acquired":"2025-08","source":"Port administration, through Bram Holt","price_cents":0,"note":"Given free against collection. Salt air: look at every contact."}');
INSERT INTO history VALUES(14,2,'lot',X'01a21609c310775a893a921237e68f1f',NULL,'{"id":"01a21609c310775a893a921237e68f1f","name":"Box of cards, auction","acquired":"2026-04","source":"Online auction, “untested, from storage”","price_cents":8800,"note":""}');
INSERT INTO history VALUES(15,2,'design',X'01a21609c310775a893a9222b956be57',NULL,'{"id":"01a21609c310775a893a9222b956be57","kind":"mainboard","maker":"Aldmoor","model":"A286-16","revision":"C","introduced":"1988","discontinued":"1991","note":"286 class processor soldered in; cell soldered beside the keyboard port."}');
INSERT INTO history VALUES(16,2,'design',X'01a21609c310775a893a922cf095bede',NULL,'{"id":"01a21609c310775a893a922cf095bede","kind":"mainboard","maker":"Aldmoor","model":"A386-40","revision":"1.2","introduced":"1990","discontinued":"1993","note":""}');
INSERT INTO history VALUES(17,2,'design',X'01a21609c310775a893a92516b03969d',NULL,'{"id":"01a21609c310775a893a92516b03969d","kind":"mainboard","maker":"Quoxby","model":"QB-486S","revision":"A","introduced":"1993","discontinued":"1995","note":""}');
INSERT INTO history VALUES(18,2,'design',X'01a21609c310775a893a92eab3e1cc3a',NULL,'{"id":"01a21609c310775a893a92eab3e1cc3a","kind":"video_card","maker":"Orbelis","model":"Oriel VL","revision":"B","introduced":"1993","discontinued":"1995","note":""}');
INSERT INTO history VALUES(19,2,'design',X'01a21609c310775a893a92ffe39de0ec',NULL,'{"id":"01a21609c310775a893a92ffe39de0ec","kind":"sound_card","maker":"Sonderwick","model":"Choir 8","revision":"","introduced":"1990","discontinued":"1993","note":"Silent without −5 V."}');
INSERT INTO history VALUES(20,2,'design',X'01a21609c310775a893a930469bd5e02',NULL,'{"id":"01a21609c310775a893a930469bd5e02","kind":"sound_card","maker":"Sonderwick","model":"Choir 16","revision":"1.3","introduced":"1993","discontinued":"1997","note":""}');
INSERT INTO history VALUES(21,2,'design',X'01a21609c310775a893a93303c8b6afc',NULL,'{"id":"01a21609c310775a893a93303c8b6afc","kind":"hard_disk","maker":"Drammoth","model":"D42A","revision":"","introduced":"1988","discontinued":"1991","note":""}');
INSERT INTO history VALUES(22,2,'design',X'01a21609c310775a893a93c06782ac35',NULL,'{"id":"01a21609c310775a893a93c06782ac35","kind":"monitor","maker":"Vesperlyn","model":"V14","revision":"","introduced":"1990","discontinued":"1995","note":""}');
INSERT INTO history VALUES(23,2,'design_connector',X'01a21609c310775a893a92233c545fb5',NULL,'{"id":"01a21609c310775a893a92233c545fb5","design":"01a21609c310775a893a9222b956be57","side":"offers","connector":"isa-16","count":5,"note":""}');
INSERT INTO history VALUES(24,2,'design_figure',X'01a21609c310775a893a9229d59e9ef2',NULL,'{"id":"01a21609c310775a893a9229d59e9ef2","design":"01a21609c310775a893a9222b956be57","figure":"bus_clock_mhz","value":16.0,"source":"Label and print on the part"}');
INSERT INTO history VALUES(25,2,'material',X'01a21609c310775a893a9214192d4399',NULL,'{"id":"01a21609c310775a893a9214192d4399","name":"White vinegar","unit":"ml","stock":400.0,"minimum":250.0,"place":"01a21609c310775a893a920084ff1153","price_cents":1,"supplier":"","note":""}');
INSERT INTO history VALUES(26,2,'part',X'01a21609c32975478c3ce682bdc41a69',NULL,'{"id":"01a21609c32975478c3ce682bdc41a69","tag":"0001","kind":"mainboard","design":"01a21609c310775a893a9222b956be57","name":"","serial":"A286-014417","originality":"original","lot":"01a21609c310775a893a920e65b64812","price_cents":1500,"acquired":"","place":"01a21609c310775a893a920d9b3231ad","inside":null,"quarantine":"","quarantined":"","note":""}');
INSERT INTO history VALUES(27,2,'part',X'01a21609c32975478c3ce689b6fb3250',NULL,'{"id":"01a21609c32975478c3ce689b6fb3250","tag":"0008","kind":"hard_disk","design":"01a21609c310775a893a93303c8b6afc","name":"","serial":"42A-900317","originality":"original","lot":"01a21609c310775a893a9211d8e9f219","price_cents":0,"acquired":"","place":"01a21609c310775a893a920d9b3231ad","inside":null,"quarantine":"","quarantined":"","note":""}');
INSERT INTO history VALUES(28,2,'part',X'01a21609c32975478c3ce68ec1832368',NULL,'{"id":"01a21609c32975478c3ce68ec1832368","tag":"0013","kind":"mainboard","design":"01a21609c310775a893a92516b03969d","name":"","serial":"QB4-77120","originality":"original","lot":"01a21609c310775a893a920fb6b15c9d","price_cents":2500,"acquired":"","place":"01a21609c310775a893a920d9b3231ad","inside":null,"quarantine":"","quarantined":"","note":""}');
INSERT INTO history VALUES(29,2,'part',X'01a21609c32975478c3ce69cee3b249a',NULL,'{"id":"01a21609c32975478c3ce69cee3b249a","tag":"0027","kind":"video_card","design":"01a21609c310775a893a92eab3e1cc3a","name":"","serial":"OVL-3390","originality":"original","lot":"01a21609c310775a893a9210c4dc9ea1","price_cents":2500,"acquired":"","place":"01a21609c310775a893a920d9b3231ad","inside":null,"quarantine":"","quarantined":"","note":""}');
INSERT INTO history VALUES(30,2,'part',X'01a21609c32975478c3ce6a3b80efdcf',NULL,'{"id":"01a21609c32975478c3ce6a3b80efdcf","tag":"0034","kind":"mainboard","design":"01a21609c310775a893a922cf095bede","name":"","serial":"A386-100931","originality":"original","lot":"01a21609c310775a893a920e65b64812","price_cents":2000,"acquired":"","place":"01a21609c310775a893a920225aa0ee0","inside":null,"quarantine":"","quarantined":"","note":"The school''s own board, with a rusty past: cleaned, tracks mended, not started since."}');
INSERT INTO history VALUES(31,2,'part',X'01a21609c32975478c3ce6b37a36ec45',NULL,'{"id":"01a21609c32975478c3ce6b37a36ec45","tag":"0050","kind":"sound_card","design":"01a21609c310775a893a930469bd5e02","name":"","serial":"","originality":"original","lot":"01a21609c310775a893a920fb6b15c9d","price_cents":800,"acquired":"","place":"01a21609c310775a893a920d9b3231ad","inside":null,"quarantine":"","quarantined":"","note":""}');
INSERT INTO history VALUES(32,2,'part',X'01a21609c32975478c3ce6dbab40f90d',NULL,'{"id":"01a21609c32975478c3ce6dbab40f90d","tag":"0090","kind":"sound_card","design":"01a21609c310775a893a92ffe39de0ec","name":"","serial":"C8-0771","originality":"original","lot":"01a21609c310775a893a921237e68f1f","price_cents":1800,"acquired":"","place":"01a21609c310775a893a920313ed5c2c","inside":null,"quarantine":"","quarantined":"","note":"Silent without −5 V: check the supply before blaming the card."}');
INSERT INTO history VALUES(33,2,'part',X'01a21609c32975478c3ce6eada403647',NULL,'{"id":"01a21609c32975478c3ce6eada403647","tag":"0105","kind":"monitor","design":"01a21609c310775a893a93c06782ac35","name":"","serial":"V14-91-2207","originality":"original","lot":null,"price_cents":null,"acquired":"2026-07","place":"01a21609c310775a893a920d9b3231ad","inside":null,"quarantine":"","quarantined":"","note":"On loan for the exhibit."}');
INSERT INTO history VALUES(34,2,'machine',X'01a21609c4e576858c538366c3cd7540',NULL,'{"id":"01a21609c4e576858c538366c3cd7540","name":"The front desk, 1989","purpose":"Visitors type their name into a guest book, as at the desk of a small firm.","window_from":"1988","window_to":"1990","standing":"typical","priority":2,"note":"Nearly there: only the clock still wants a supply, so that the date holds overnight."}');
INSERT INTO history VALUES(35,2,'machine',X'01a21609c4fd76cebe1d58a3c76163fd',NULL,'{"id":"01a21609c4fd76cebe1d58a3c76163fd","name":"The schoolroom, 1991","purpose":"A pupil''s first lines of a program, as in the computer room of Marshwick Lane School.","window_from":"1990","window_to":"1992","standing":"typical","priority":4,"note":"No supply, disk or case yet. Two boards would suit; the decision is open."}');
INSERT INTO history VALUES(36,2,'role',X'01a21609c4e576858c5383670ae09502',NULL,'{"id":"01a21609c4e576858c5383670ae09502","machine":"01a21609c4e576858c538366c3cd7540","kind":"mainboard","name":"","required":1,"count":1,"note":""}');
INSERT INTO history VALUES(37,2,'role',X'01a21609c4fd76cebe1d58a489014d83',NULL,'{"id":"01a21609c4fd76cebe1d58a489014d83","machine":"01a21609c4fd76cebe1d58a3c76163fd","kind":"mainboard","name":"","required":1,"count":1,"note":""}');
INSERT INTO history VALUES(38,2,'placement',X'01a21609c4fd76cebe1d58a5376174e6',NULL,'{"id":"01a21609c4fd76cebe1d58a5376174e6","machine":"01a21609c4fd76cebe1d58a3c76163fd","role":"01a21609c4fd76cebe1d58a489014d83","part":"01a21609c32975478c3ce6a3b80efdcf","pinned":0,"planned_on":"2026-06-29","planned_sequence":413,"reason":"Decide after the bench start of 0035."}');
INSERT INTO history VALUES(39,2,'fitting',X'01a21609c4e576858c5383680e8986a4',NULL,'{"id":"01a21609c4e576858c5383680e8986a4","machine":"01a21609c4e576858c538366c3cd7540","role":"01a21609c4e576858c5383670ae09502","part":"01a21609c32975478c3ce682bdc41a69","fitted_on":"2026-10-12","fitted_sequence":368,"removed_on":null,"removed_sequence":null,"note":""}');
INSERT INTO history VALUES(40,2,'power_on',X'01a21609c4e576858c538380b695718e',NULL,'{"id":"01a21609c4e576858c538380b695718e","machine":"01a21609c4e576858c538366c3cd7540","switched_on":"2026-10-13","switched_sequence":383,"configuration":"Board, one bank of memory, video, multi-I/O; then floppy; then disk.","settings":"Board jumpers as noted; disk as only drive.","steps":"Three seconds, off, felt all parts. Then to the first picture. Floppy, disk, keyboard one by one.","result":"well","happened":"Checksum message because nothing feeds the clock; otherwise straight to the prompt.","who":"Ines Marlow"}');
INSERT INTO history VALUES(41,2,'marking',X'01a21609c32975478c3ce6f46d875102',NULL,'{"id":"01a21609c32975478c3ce6f46d875102","part":"01a21609c32975478c3ce682bdc41a69","read_on":"2024-12-26","read_sequence":1,"surface":"board","place_on_part":"lower edge","text":"9012","from_factory":"yes","scheme":"","supersedes":null,"note":""}');
INSERT INTO history VALUES(42,2,'survey',X'01a21609c32a749eac76c54dd1e16b57',NULL,'{"id":"01a21609c32a749eac76c54dd1e16b57","part":"01a21609c32975478c3ce682bdc41a69","looked_on":"2024-12-26","looked_sequence":7,"who":"Ines Marlow","why":"On arrival","supersedes":null,"note":"","answers":"[{\"question\":\"running\",\"given\":{\"is\":\"seen\"}},{\"question\":\"clock-supply\",\"given\":{\"is\":\"rechargeable\"},\"place_on_part\":\"beside the keyboard port\"},{\"question\":\"coin-cell\",\"given\":{\"is\":\"good\"}},{\"question\":\"leak-reach\",\"given\":{\"is\":\"none\"}},{\"question\":\"electrolytics\",\"given\":{\"is\":\"sound\"}},{\"question\":\"tantalums\",\"given\":{\"is\":\"none\"}},{\"question\":\"rails\",\"given\":{\"is\":\"clear\"}},{\"question\":\"power-plug\",\"given\":{\"is\":\"two-plug\"}},{\"question\":\"voltage-jumpers\",\"given\":{\"is\":\"right\"}},{\"question\":\"jumpers\",\"given\":{\"is\":\"known\"}},{\"question\":\"board-faces\",\"given\":{\"is\":\"sound\"}},{\"question\":\"joints\",\"given\":{\"is\":\"sound\"}},{\"question\":\"parts-present\",\"given\":{\"is\":\"all\"}},{\"question\":\"sockets\",\"given\":{\"is\":\"sound\"}},{\"question\":\"socketed-chips\",\"given\":{\"is\":\"home\"}},{\"question\":\"headers\",\"given\":{\"is\":\"sound\"}},{\"question\":\"shells\",\"given\":{\"is\":\"bright\"}},{\"question\":\"keyboard-port\",\"given\":{\"is\":\"whole\"}},{\"question\":\"firmware\",\"given\":{\"is\":\"saved\"}},{\"question\":\"dirt\",\"given\":{\"is\":\"clean\"}}]"}');
INSERT INTO history VALUES(43,2,'survey',X'01a21609c3c2732493f6e2734d4c0e5a',NULL,'{"id":"01a21609c3c2732493f6e2734d4c0e5a","part":"01a21609c32975478c3ce6a3b80efdcf","looked_on":"2024-11-16","looked_sequence":131,"who":"Ines Marlow","why":"On arrival","supersedes":null,"note":"","answers":"[{\"question\":\"running\",\"given\":{\"is\":\"untested\"}},{\"question\":\"clock-supply\",\"given\":{\"is\":\"leaking\"},\"place_on_part\":\"beside the keyboard port\"},{\"question\":\"coin-cell\",\"given\":{\"is\":\"good\"}},{\"question\":\"leak-reach\",\"given\":{\"is\":\"far\"},\"place_on_part\":\"keyboard port and first slot\"},{\"question\":\"electrolytics\",\"given\":{\"is\":\"sound\"}},{\"question\":\"tantalums\",\"given\":{\"is\":\"none\"}},{\"question\":\"rails\",\"given\":{\"is\":\"clear\"}},{\"question\":\"power-plug\",\"given\":{\"is\":\"two-plug\"}},{\"question\":\"voltage-jumpers\",\"given\":{\"is\":\"automatic\"}},{\"question\":\"jumpers\",\"given\":{\"is\":\"known\"}},{\"question\":\"board-faces\",\"given\":{\"is\":\"sound\"}},{\"question\":\"joints\",\"given\":{\"is\":\"sound\"}},{\"question\":\"parts-present\",\"given\":{\"is\":\"all\"}},{\"question\":\"sockets\",\"given\":{\"is\":\"sound\"}},{\"question\":\"socketed-chips\",\"given\":{\"is\":\"home\"}},{\"question\":\"headers\",\"given\":{\"is\":\"sound\"}},{\"question\":\"shells\",\"given\":{\"is\":\"bright\"}},{\"question\":\"keyboard-port\",\"given\":{\"is\":\"whole\"}},{\"question\":\"firmware\",\"given\":{\"is\":\"saved\"}},{\"question\":\"dirt\",\"given\":{\"is\":\"clean\"}}]"}');
INSERT INTO history VALUES(44,2,'finding',X'01a21609c32a749eac76c54eb09f1e0c',NULL,'{"id":"01a21609c32a749eac76c54eb09f1e0c","part":"01a21609c32975478c3ce682bdc41a69","what":"cell-present","place_on_part":"beside the keyboard port","source":"survey","question":"clock-supply","note":""}');
INSERT INTO history VALUES(45,2,'finding',X'01a21609c3c3713ba45f02d8e9e5ccad',NULL,'{"id":"01a21609c3c3713ba45f02d8e9e5ccad","part":"01a21609c32975478c3ce6a3b80efdcf","what":"cell-leaked","place_on_part":"beside the keyboard port","source":"survey","question":"clock-supply","note":""}');
INSERT INTO history VALUES(46,2,'finding',X'01a21609c3c3713ba45f02da5be4fba4',NULL,'{"id":"01a21609c3c3713ba45f02da5be4fba4","part":"01a21609c32975478c3ce6a3b80efdcf","what":"leak-residue","place_on_part":"keyboard port and first slot","source":"survey","question":"leak-reach","note":""}');
INSERT INTO history VALUES(47,2,'work',X'01a21609c32a749eac76c55139aec4f1',NULL,'{"id":"01a21609c32a749eac76c55139aec4f1","part":"01a21609c32975478c3ce682bdc41a69","finding":"01a21609c32a749eac76c54eb09f1e0c","rule":"cut-cell","title":"","hold":"storage","nature":"repair","state":"done","changed_on":"2024-12-27","changed_sequence":10,"who":"Ines Marlow","minutes":8,"used":"","reason":"","reversible":null,"note":"Cell bagged, polarity marked on the bag."}');
INSERT INTO history VALUES(48,2,'look',X'01a21609c32a749eac76c54fbeb3da96',NULL,'{"id":"01a21609c32a749eac76c54fbeb3da96","finding":"01a21609c32a749eac76c54eb09f1e0c","looked_on":"2024-12-26","looked_sequence":8,"state":"open","severity":"plain","share_percent":null,"again_by":"","reason":"","survey":"01a21609c32a749eac76c54dd1e16b57","work":null}');
INSERT INTO history VALUES(49,2,'look',X'01a21609c32a749eac76c552c3bd5946',NULL,'{"id":"01a21609c32a749eac76c552c3bd5946","finding":"01a21609c32a749eac76c54eb09f1e0c","looked_on":"2024-12-27","looked_sequence":11,"state":"cured","severity":"plain","share_percent":null,"again_by":"","reason":"","survey":null,"work":"01a21609c32a749eac76c55139aec4f1"}');
INSERT INTO history VALUES(50,2,'look',X'01a21609c3c3713ba45f02d95c0d41bb',NULL,'{"id":"01a21609c3c3713ba45f02d95c0d41bb","finding":"01a21609c3c3713ba45f02d8e9e5ccad","looked_on":"2024-11-16","looked_sequence":132,"state":"open","severity":"grave","share_percent":null,"again_by":"","reason":"","survey":"01a21609c3c2732493f6e2734d4c0e5a","work":null}');
INSERT INTO history VALUES(51,2,'look',X'01a21609c3c3713ba45f02db73ba42b1',NULL,'{"id":"01a21609c3c3713ba45f02db73ba42b1","finding":"01a21609c3c3713ba45f02da5be4fba4","looked_on":"2024-11-16","looked_sequence":133,"state":"open","severity":"grave","share_percent":null,"again_by":"","reason":"","survey":"01a21609c3c2732493f6e2734d4c0e5a","work":null}');
INSERT INTO history VALUES(52,2,'capacitor',X'01a21609c399756182bcdefab00b4ca0',NULL,'{"id":"01a21609c399756182bcdefab00b4ca0","part":"01a21609c32975478c3ce69cee3b249a","designator":"C1","place_on_part":"round the main chip","capacitance_uf":10.0,"voltage_v":25.0,"temperature_c":105.0,"diameter_mm":4.0,"height_mm":null,"pitch_mm":null,"dielectric":"wet_aluminium","mounting":"surface","series":"QV","polarity":"","logged_on":"2026-08-18","logged_sequence":98,"state":"leaking"}');
INSERT INTO history VALUES(53,2,'capacitor_look',X'01a21609c399756182bcdf06ac750e1b',NULL,'{"id":"01a21609c399756182bcdf06ac750e1b","capacitor":"01a21609c399756182bcdefab00b4ca0","looked_on":"2026-09-17","looked_sequence":109,"state":"sound","measured_uf":null,"esr_mohm":900.0,"leakage_ua":null,"replaced_by":"10 µF 25 V, surface mount, new","note":""}');
INSERT INTO history VALUES(54,2,'reading',X'01a21609c34d77f39e8b34663f5adaab',NULL,'{"id":"01a21609c34d77f39e8b34663f5adaab","part":"01a21609c32975478c3ce689b6fb3250","machine":null,"measured_on":"2026-10-07","measured_sequence":34,"quantity":"Time to spin up","value":7.0,"unit":"s","condition":"","who":"Ines Marlow","supersedes":null,"note":""}');
INSERT INTO history VALUES(55,2,'setting',X'01a21609c32975478c3ce6f7a258845f',NULL,'{"id":"01a21609c32975478c3ce6f7a258845f","part":"01a21609c32975478c3ce682bdc41a69","found_on":"2024-12-26","found_sequence":4,"name":"JP1","value":"closed","source":"print on the board"}');
INSERT INTO history VALUES(56,2,'proof',X'01a21609c32a749eac76c556a3392119',NULL,'{"id":"01a21609c32a749eac76c556a3392119","part":"01a21609c32975478c3ce682bdc41a69","machine":null,"test":"boot","run_on":"2026-10-07","run_sequence":14,"rig":"Bench: proven supply, known-good processor, memory set and video card, test card","minutes":15,"criterion":"Starts to a picture with no beep code; supply voltages right; no part hot.","result":"passed","who":"Ines Marlow","note":""}');
INSERT INTO history VALUES(57,2,'fault_case',X'01a21609c4df74d297423581430fc675',NULL,'{"id":"01a21609c4df74d297423581430fc675","part":"01a21609c32975478c3ce6dbab40f90d","machine":null,"opened_on":"2026-05-30","opened_sequence":365,"symptom":"Left channel silent, hum on the right","state":"open","outcome":""}');
INSERT INTO history VALUES(58,2,'trial',X'01a21609c4df74d297423582d4fac529',NULL,'{"id":"01a21609c4df74d297423582d4fac529","case":"01a21609c4df74d297423581430fc675","tried_on":"2026-05-30","tried_sequence":366,"configuration":"Bench board 0023, supply 0031","step":"Swapped the card for 0050","suspect":"01a21609c32975478c3ce6dbab40f90d","known_good":"01a21609c32975478c3ce6b37a36ec45","result":"symptom_gone","note":""}');
INSERT INTO history VALUES(59,2,'custody_event',X'01a21609c4bd743c8528d4062da19ccc',NULL,'{"id":"01a21609c4bd743c8528d4062da19ccc","part":"01a21609c32975478c3ce6eada403647","happened_on":"2026-08-08","happened_sequence":349,"act":"borrowed","party":"Museum at Tolver Mill","until":"2027-09-22","price_cents":null,"condition":"Clean, a scratch on the left side.","note":""}');
INSERT INTO history VALUES(60,2,'valuation',X'01a21609c365778183fcaadd2b1d1fc8',NULL,'{"id":"01a21609c365778183fcaadd2b1d1fc8","part":"01a21609c32975478c3ce68ec1832368","on":"2026-09-27","amount_cents":9000,"basis":"Two sales of the same design this year"}');
INSERT INTO history VALUES(61,2,'photo',X'01a21609c32a749eac76c5572ec18763',NULL,'{"id":"01a21609c32a749eac76c5572ec18763","part":"01a21609c32975478c3ce682bdc41a69","machine":null,"lot":null,"content":"b8e50faf7f5d746a910d099f3a2bd9952c30f3356fe61ff79ceffc40fcc6cee9","extension":"jpg","width_px":800,"height_px":600,"added_on":"2024-12-26","added_sequence":464,"taken":"2024-12-26","view":"overview","caption":"The corner by the cell","is_map":0}');
INSERT INTO history VALUES(62,2,'photo',X'01a21609c3c3713ba45f02e6aaaaa6a0',NULL,'{"id":"01a21609c3c3713ba45f02e6aaaaa6a0","part":"01a21609c32975478c3ce6a3b80efdcf","machine":null,"lot":null,"content":"139c4360a13b41b245e8e06f80471edcf27b755cdcc4f9ba92e7d973fd37a871","extension":"jpg","width_px":800,"height_px":600,"added_on":"2024-11-16","added_sequence":496,"taken":"2024-11-16","view":"overview","caption":"As it came","is_map":0}');
INSERT INTO history VALUES(63,2,'photo_mark',X'0190163d8694739baea5966c26f8ad92',NULL,'{"id":"0190163d8694739baea5966c26f8ad92","photo":"01a21609c32a749eac76c5572ec18763","points":"[]","finding":"01a21609c32a749eac76c54eb09f1e0c","capacitor":null,"marking":null,"work":null,"note":"all of it","role":"place","length_mm":null,"breadth_mm":null,"red":null,"green":null,"blue":null,"clipped_percent":null}');
INSERT INTO history VALUES(64,2,'photo_mark',X'01a21609c32a749eac76c558c60a01ac',NULL,'{"id":"01a21609c32a749eac76c558c60a01ac","photo":"01a21609c32a749eac76c5572ec18763","points":"[[0.8,0.18]]","finding":"01a21609c32a749eac76c54eb09f1e0c","capacitor":null,"marking":null,"work":null,"note":"","role":"place","length_mm":null,"breadth_mm":null,"red":null,"green":null,"blue":null,"clipped_percent":null}');
INSERT INTO history VALUES(65,2,'photo_mark',X'01a21609c3c3713ba45f02e7c083f265',NULL,'{"id":"01a21609c3c3713ba45f02e7c083f265","photo":"01a21609c3c3713ba45f02e6aaaaa6a0","points":"[[0.8,0.19]]","finding":"01a21609c3c3713ba45f02d8e9e5ccad","capacitor":null,"marking":null,"work":null,"note":"","role":"place","length_mm":null,"breadth_mm":null,"red":null,"green":null,"blue":null,"clipped_percent":null}');
INSERT INTO history VALUES(66,2,'photo_mark',X'01a21609c3c3713ba45f02e8eaefc8b3',NULL,'{"id":"01a21609c3c3713ba45f02e8eaefc8b3","photo":"01a21609c3c3713ba45f02e6aaaaa6a0","points":"[[0.74,0.12]]","finding":"01a21609c3c3713ba45f02da5be4fba4","capacitor":null,"marking":null,"work":null,"note":"","role":"place","length_mm":null,"breadth_mm":null,"red":null,"green":null,"blue":null,"clipped_percent":null}');
INSERT INTO history VALUES(67,2,'attachment',X'01a21609c32a749eac76c559f09e2fb4',NULL,'{"id":"01a21609c32a749eac76c559f09e2fb4","part":"01a21609c32975478c3ce682bdc41a69","machine":null,"lot":null,"kind":"firmware_image","content":"962e6d7ca8dcf3fdfb665d2a66f54ced300e420cc2364c21309f83bc319bf896","file_name":"a286-odd.bin","bytes":34,"added_on":"2024-12-26","added_sequence":571,"note":"Two chips: this is the odd one."}');
INSERT INTO history VALUES(68,3,'work',X'dc509db770094c3aaa302a33b0d13987',NULL,'{"id":"dc509db770094c3aaa302a33b0d13987","part":"01a21609c32975478c3ce682bdc41a69","finding":null,"rule":"","title":"Wash the board","hold":"storage","nature":"repair","state":"open","changed_on":"2024-12-27","changed_sequence":10,"who":"Ines Marlow","minutes":8,"used":"","reason":"","reversible":null,"note":"Cell bagged, polarity marked on the bag."}');
INSERT INTO history VALUES(69,3,'work_after',X'51fe10b029c04ce9ad284a801454c0c4',NULL,'{"id":"51fe10b029c04ce9ad284a801454c0c4","part":"01a21609c32975478c3ce682bdc41a69","work":"dc509db770094c3aaa302a33b0d13987","after":"01a21609c32a749eac76c55139aec4f1"}');
INSERT INTO history VALUES(70,3,'material_use',X'8953aba5462641cbaef67c46b1d8b6b8',NULL,'{"id":"8953aba5462641cbaef67c46b1d8b6b8","part":"01a21609c32975478c3ce682bdc41a69","work":"01a21609c32a749eac76c55139aec4f1","material":"01a21609c310775a893a9214192d4399","amount":2.5}');
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
INSERT INTO workshop VALUES(X'01a21609c29574579b5555c79ab22027','Lantern Street Workshop','Ines Marlow','EUR','Volunteers who prepare the exhibit “At home and at work: computers 1988 to 2002”. Seven machines have to run under visitors'' hands. This is a sample: everything in it is invented, and everything in it may be changed.');
CREATE TABLE place (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  within BLOB REFERENCES place DEFERRABLE INITIALLY DEFERRED,
  name TEXT NOT NULL CHECK (name <> ''),
  note TEXT NOT NULL
) STRICT, WITHOUT ROWID;
INSERT INTO place VALUES(X'01a21609c310775a893a91ff77ae7127',NULL,'Workshop','Ground floor, Lantern Street');
INSERT INTO place VALUES(X'01a21609c310775a893a920084ff1153',X'01a21609c310775a893a91ff77ae7127','Bench','');
INSERT INTO place VALUES(X'01a21609c310775a893a9201d3a25fd2',X'01a21609c310775a893a91ff77ae7127','Shelf A','Boards and cards');
INSERT INTO place VALUES(X'01a21609c310775a893a920225aa0ee0',X'01a21609c310775a893a9201d3a25fd2','Box A1: mainboards','');
INSERT INTO place VALUES(X'01a21609c310775a893a920313ed5c2c',X'01a21609c310775a893a9201d3a25fd2','Box A2: cards','');
INSERT INTO place VALUES(X'01a21609c310775a893a920d9b3231ad',NULL,'Exhibit hall','');
CREATE TABLE lot (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  name TEXT NOT NULL,
  acquired TEXT NOT NULL CHECK (acquired = '' OR acquired BETWEEN '1900' AND '2199-12-31'),
  source TEXT NOT NULL,
  price_cents INTEGER,
  note TEXT NOT NULL
) STRICT, WITHOUT ROWID;
INSERT INTO lot VALUES(X'01a21609c310775a893a920e65b64812','School clearance, Marshwick Lane','2024-09','Marshwick Lane School, the caretaker',18000,'One computer room of the early nineties. All of it stood in the same cellar: what one has, the others may have.');
INSERT INTO lot VALUES(X'01a21609c310775a893a920fb6b15c9d','Attic find, Tolver Street','2025-04','Family Ardwin',6000,'Dry attic, original boxes for some.');
INSERT INTO lot VALUES(X'01a21609c310775a893a9210c4dc9ea1','Swap meet, Fennhall','2025-12','Several tables',14500,'');
INSERT INTO lot VALUES(X'01a21609c310775a893a9211d8e9f219','Harbour office clear-out','2025-08','Port administration, through Bram Holt',0,'Given free against collection. Salt air: look at every contact.');
INSERT INTO lot VALUES(X'01a21609c310775a893a921237e68f1f','Box of cards, auction','2026-04','Online auction, “untested, from storage”',8800,'');
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
INSERT INTO design VALUES(X'01a21609c310775a893a9222b956be57','mainboard','Aldmoor','A286-16','C','1988','1991','286 class processor soldered in; cell soldered beside the keyboard port.');
INSERT INTO design VALUES(X'01a21609c310775a893a922cf095bede','mainboard','Aldmoor','A386-40','1.2','1990','1993','');
INSERT INTO design VALUES(X'01a21609c310775a893a92516b03969d','mainboard','Quoxby','QB-486S','A','1993','1995','');
INSERT INTO design VALUES(X'01a21609c310775a893a92eab3e1cc3a','video_card','Orbelis','Oriel VL','B','1993','1995','');
INSERT INTO design VALUES(X'01a21609c310775a893a92ffe39de0ec','sound_card','Sonderwick','Choir 8','','1990','1993','Silent without −5 V.');
INSERT INTO design VALUES(X'01a21609c310775a893a930469bd5e02','sound_card','Sonderwick','Choir 16','1.3','1993','1997','');
INSERT INTO design VALUES(X'01a21609c310775a893a93303c8b6afc','hard_disk','Drammoth','D42A','','1988','1991','');
INSERT INTO design VALUES(X'01a21609c310775a893a93c06782ac35','monitor','Vesperlyn','V14','','1990','1995','');
CREATE TABLE design_connector (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  design BLOB NOT NULL REFERENCES design DEFERRABLE INITIALLY DEFERRED,
  side TEXT NOT NULL CHECK (side IN ('offers', 'needs')),
  connector TEXT NOT NULL,
  count INTEGER NOT NULL CHECK (count >= 1),
  note TEXT NOT NULL
) STRICT, WITHOUT ROWID;
INSERT INTO design_connector VALUES(X'01a21609c310775a893a92233c545fb5',X'01a21609c310775a893a9222b956be57','offers','isa-16',5,'');
CREATE TABLE design_figure (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  design BLOB NOT NULL REFERENCES design DEFERRABLE INITIALLY DEFERRED,
  figure TEXT NOT NULL,
  value REAL NOT NULL,
  source TEXT NOT NULL
) STRICT, WITHOUT ROWID;
INSERT INTO design_figure VALUES(X'01a21609c310775a893a9229d59e9ef2',X'01a21609c310775a893a9222b956be57','bus_clock_mhz',16.0,'Label and print on the part');
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
INSERT INTO material VALUES(X'01a21609c310775a893a9214192d4399','White vinegar','ml',400.0,250.0,X'01a21609c310775a893a920084ff1153',1,'','');
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
INSERT INTO part VALUES(X'01a21609c32975478c3ce682bdc41a69','0001','mainboard',X'01a21609c310775a893a9222b956be57','','A286-014417','original',X'01a21609c310775a893a920e65b64812',1500,'',X'01a21609c310775a893a920d9b3231ad',NULL,'','','');
INSERT INTO part VALUES(X'01a21609c32975478c3ce689b6fb3250','0008','hard_disk',X'01a21609c310775a893a93303c8b6afc','','42A-900317','original',X'01a21609c310775a893a9211d8e9f219',0,'',X'01a21609c310775a893a920d9b3231ad',NULL,'','','');
INSERT INTO part VALUES(X'01a21609c32975478c3ce68ec1832368','0013','mainboard',X'01a21609c310775a893a92516b03969d','','QB4-77120','original',X'01a21609c310775a893a920fb6b15c9d',2500,'',X'01a21609c310775a893a920d9b3231ad',NULL,'','','');
INSERT INTO part VALUES(X'01a21609c32975478c3ce69cee3b249a','0027','video_card',X'01a21609c310775a893a92eab3e1cc3a','','OVL-3390','original',X'01a21609c310775a893a9210c4dc9ea1',2500,'',X'01a21609c310775a893a920d9b3231ad',NULL,'','','');
INSERT INTO part VALUES(X'01a21609c32975478c3ce6a3b80efdcf','0034','mainboard',X'01a21609c310775a893a922cf095bede','','A386-100931','original',X'01a21609c310775a893a920e65b64812',2000,'',X'01a21609c310775a893a920225aa0ee0',NULL,'','','The school''s own board, with a rusty past: cleaned, tracks mended, not started since.');
INSERT INTO part VALUES(X'01a21609c32975478c3ce6b37a36ec45','0050','sound_card',X'01a21609c310775a893a930469bd5e02','','','original',X'01a21609c310775a893a920fb6b15c9d',800,'',X'01a21609c310775a893a920d9b3231ad',NULL,'','','');
INSERT INTO part VALUES(X'01a21609c32975478c3ce6dbab40f90d','0090','sound_card',X'01a21609c310775a893a92ffe39de0ec','','C8-0771','original',X'01a21609c310775a893a921237e68f1f',1800,'',X'01a21609c310775a893a920313ed5c2c',NULL,'','','Silent without −5 V: check the supply before blaming the card.');
INSERT INTO part VALUES(X'01a21609c32975478c3ce6eada403647','0105','monitor',X'01a21609c310775a893a93c06782ac35','','V14-91-2207','original',NULL,NULL,'2026-07',X'01a21609c310775a893a920d9b3231ad',NULL,'','','On loan for the exhibit.');
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
INSERT INTO machine VALUES(X'01a21609c4e576858c538366c3cd7540','The front desk, 1989','Visitors type their name into a guest book, as at the desk of a small firm.','1988','1990','typical',2,'Nearly there: only the clock still wants a supply, so that the date holds overnight.');
INSERT INTO machine VALUES(X'01a21609c4fd76cebe1d58a3c76163fd','The schoolroom, 1991','A pupil''s first lines of a program, as in the computer room of Marshwick Lane School.','1990','1992','typical',4,'No supply, disk or case yet. Two boards would suit; the decision is open.');
CREATE TABLE role (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  machine BLOB NOT NULL REFERENCES machine DEFERRABLE INITIALLY DEFERRED,
  kind TEXT NOT NULL,
  name TEXT NOT NULL,
  required INTEGER NOT NULL CHECK (required IN (0, 1)),
  count INTEGER NOT NULL CHECK (count >= 1),
  note TEXT NOT NULL
) STRICT, WITHOUT ROWID;
INSERT INTO role VALUES(X'01a21609c4e576858c5383670ae09502',X'01a21609c4e576858c538366c3cd7540','mainboard','',1,1,'');
INSERT INTO role VALUES(X'01a21609c4fd76cebe1d58a489014d83',X'01a21609c4fd76cebe1d58a3c76163fd','mainboard','',1,1,'');
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
INSERT INTO placement VALUES(X'01a21609c4fd76cebe1d58a5376174e6',X'01a21609c4fd76cebe1d58a3c76163fd',X'01a21609c4fd76cebe1d58a489014d83',X'01a21609c32975478c3ce6a3b80efdcf',0,'2026-06-29',413,'Decide after the bench start of 0035.');
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
INSERT INTO fitting VALUES(X'01a21609c4e576858c5383680e8986a4',X'01a21609c4e576858c538366c3cd7540',X'01a21609c4e576858c5383670ae09502',X'01a21609c32975478c3ce682bdc41a69','2026-10-12',368,NULL,NULL,'');
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
INSERT INTO power_on VALUES(X'01a21609c4e576858c538380b695718e',X'01a21609c4e576858c538366c3cd7540','2026-10-13',383,'Board, one bank of memory, video, multi-I/O; then floppy; then disk.','Board jumpers as noted; disk as only drive.','Three seconds, off, felt all parts. Then to the first picture. Floppy, disk, keyboard one by one.','well','Checksum message because nothing feeds the clock; otherwise straight to the prompt.','Ines Marlow');
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
INSERT INTO marking VALUES(X'01a21609c32975478c3ce6f46d875102',X'01a21609c32975478c3ce682bdc41a69','2024-12-26',1,'board','lower edge','9012','yes','',NULL,'');
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
INSERT INTO survey VALUES(X'01a21609c32a749eac76c54dd1e16b57',X'01a21609c32975478c3ce682bdc41a69','2024-12-26',7,'Ines Marlow','On arrival',NULL,'','[{"question":"running","given":{"is":"seen"}},{"question":"clock-supply","given":{"is":"rechargeable"},"place_on_part":"beside the keyboard port"},{"question":"coin-cell","given":{"is":"good"}},{"question":"leak-reach","given":{"is":"none"}},{"question":"electrolytics","given":{"is":"sound"}},{"question":"tantalums","given":{"is":"none"}},{"question":"rails","given":{"is":"clear"}},{"question":"power-plug","given":{"is":"two-plug"}},{"question":"voltage-jumpers","given":{"is":"right"}},{"question":"jumpers","given":{"is":"known"}},{"question":"board-faces","given":{"is":"sound"}},{"question":"joints","given":{"is":"sound"}},{"question":"parts-present","given":{"is":"all"}},{"question":"sockets","given":{"is":"sound"}},{"question":"socketed-chips","given":{"is":"home"}},{"question":"headers","given":{"is":"sound"}},{"question":"shells","given":{"is":"bright"}},{"question":"keyboard-port","given":{"is":"whole"}},{"question":"firmware","given":{"is":"saved"}},{"question":"dirt","given":{"is":"clean"}}]');
INSERT INTO survey VALUES(X'01a21609c3c2732493f6e2734d4c0e5a',X'01a21609c32975478c3ce6a3b80efdcf','2024-11-16',131,'Ines Marlow','On arrival',NULL,'','[{"question":"running","given":{"is":"untested"}},{"question":"clock-supply","given":{"is":"leaking"},"place_on_part":"beside the keyboard port"},{"question":"coin-cell","given":{"is":"good"}},{"question":"leak-reach","given":{"is":"far"},"place_on_part":"keyboard port and first slot"},{"question":"electrolytics","given":{"is":"sound"}},{"question":"tantalums","given":{"is":"none"}},{"question":"rails","given":{"is":"clear"}},{"question":"power-plug","given":{"is":"two-plug"}},{"question":"voltage-jumpers","given":{"is":"automatic"}},{"question":"jumpers","given":{"is":"known"}},{"question":"board-faces","given":{"is":"sound"}},{"question":"joints","given":{"is":"sound"}},{"question":"parts-present","given":{"is":"all"}},{"question":"sockets","given":{"is":"sound"}},{"question":"socketed-chips","given":{"is":"home"}},{"question":"headers","given":{"is":"sound"}},{"question":"shells","given":{"is":"bright"}},{"question":"keyboard-port","given":{"is":"whole"}},{"question":"firmware","given":{"is":"saved"}},{"question":"dirt","given":{"is":"clean"}}]');
CREATE TABLE finding (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  part BLOB NOT NULL REFERENCES part DEFERRABLE INITIALLY DEFERRED,
  what TEXT NOT NULL,
  place_on_part TEXT NOT NULL,
  source TEXT NOT NULL CHECK (source IN ('survey', 'capacitors', 'work', 'hand')),
  question TEXT NOT NULL,
  note TEXT NOT NULL
) STRICT, WITHOUT ROWID;
INSERT INTO finding VALUES(X'01a21609c32a749eac76c54eb09f1e0c',X'01a21609c32975478c3ce682bdc41a69','cell-present','beside the keyboard port','survey','clock-supply','');
INSERT INTO finding VALUES(X'01a21609c3c3713ba45f02d8e9e5ccad',X'01a21609c32975478c3ce6a3b80efdcf','cell-leaked','beside the keyboard port','survey','clock-supply','');
INSERT INTO finding VALUES(X'01a21609c3c3713ba45f02da5be4fba4',X'01a21609c32975478c3ce6a3b80efdcf','leak-residue','keyboard port and first slot','survey','leak-reach','');
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
INSERT INTO work VALUES(X'01a21609c32a749eac76c55139aec4f1',X'01a21609c32975478c3ce682bdc41a69',X'01a21609c32a749eac76c54eb09f1e0c','cut-cell','','storage','repair','done','2024-12-27',10,'Ines Marlow',8,'','',NULL,'Cell bagged, polarity marked on the bag.');
INSERT INTO work VALUES(X'dc509db770094c3aaa302a33b0d13987',X'01a21609c32975478c3ce682bdc41a69',NULL,'','Wash the board','storage','repair','open','2024-12-27',10,'Ines Marlow',8,'','',NULL,'Cell bagged, polarity marked on the bag.');
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
INSERT INTO look VALUES(X'01a21609c32a749eac76c54fbeb3da96',X'01a21609c32a749eac76c54eb09f1e0c','2024-12-26',8,'open','plain',NULL,'','',X'01a21609c32a749eac76c54dd1e16b57',NULL);
INSERT INTO look VALUES(X'01a21609c32a749eac76c552c3bd5946',X'01a21609c32a749eac76c54eb09f1e0c','2024-12-27',11,'cured','plain',NULL,'','',NULL,X'01a21609c32a749eac76c55139aec4f1');
INSERT INTO look VALUES(X'01a21609c3c3713ba45f02d95c0d41bb',X'01a21609c3c3713ba45f02d8e9e5ccad','2024-11-16',132,'open','grave',NULL,'','',X'01a21609c3c2732493f6e2734d4c0e5a',NULL);
INSERT INTO look VALUES(X'01a21609c3c3713ba45f02db73ba42b1',X'01a21609c3c3713ba45f02da5be4fba4','2024-11-16',133,'open','grave',NULL,'','',X'01a21609c3c2732493f6e2734d4c0e5a',NULL);
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
INSERT INTO capacitor VALUES(X'01a21609c399756182bcdefab00b4ca0',X'01a21609c32975478c3ce69cee3b249a','C1','round the main chip',10.0,25.0,105.0,4.0,NULL,NULL,'wet_aluminium','surface','QV','','2026-08-18',98,'leaking');
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
INSERT INTO capacitor_look VALUES(X'01a21609c399756182bcdf06ac750e1b',X'01a21609c399756182bcdefab00b4ca0','2026-09-17',109,'sound',NULL,900.0,NULL,'10 µF 25 V, surface mount, new','');
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
INSERT INTO reading VALUES(X'01a21609c34d77f39e8b34663f5adaab',X'01a21609c32975478c3ce689b6fb3250',NULL,'2026-10-07',34,'Time to spin up',7.0,'s','','Ines Marlow',NULL,'',NULL,NULL);
CREATE TABLE setting (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  part BLOB NOT NULL REFERENCES part DEFERRABLE INITIALLY DEFERRED,
  found_on TEXT NOT NULL CHECK (found_on = '' OR found_on BETWEEN '1900' AND '2199-12-31'),
  found_sequence INTEGER NOT NULL CHECK (found_sequence >= 1),
  name TEXT NOT NULL,
  value TEXT NOT NULL,
  source TEXT NOT NULL
) STRICT, WITHOUT ROWID;
INSERT INTO setting VALUES(X'01a21609c32975478c3ce6f7a258845f',X'01a21609c32975478c3ce682bdc41a69','2024-12-26',4,'JP1','closed','print on the board');
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
INSERT INTO proof VALUES(X'01a21609c32a749eac76c556a3392119',X'01a21609c32975478c3ce682bdc41a69',NULL,'boot','2026-10-07',14,'Bench: proven supply, known-good processor, memory set and video card, test card',15,'Starts to a picture with no beep code; supply voltages right; no part hot.','passed','Ines Marlow','');
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
INSERT INTO fault_case VALUES(X'01a21609c4df74d297423581430fc675',X'01a21609c32975478c3ce6dbab40f90d',NULL,'2026-05-30',365,'Left channel silent, hum on the right','open','');
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
INSERT INTO trial VALUES(X'01a21609c4df74d297423582d4fac529',X'01a21609c4df74d297423581430fc675','2026-05-30',366,'Bench board 0023, supply 0031','Swapped the card for 0050',X'01a21609c32975478c3ce6dbab40f90d',X'01a21609c32975478c3ce6b37a36ec45','symptom_gone','','');
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
INSERT INTO custody_event VALUES(X'01a21609c4bd743c8528d4062da19ccc',X'01a21609c32975478c3ce6eada403647','2026-08-08',349,'borrowed','Museum at Tolver Mill','2027-09-22',NULL,'Clean, a scratch on the left side.','');
CREATE TABLE valuation (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  part BLOB NOT NULL REFERENCES part DEFERRABLE INITIALLY DEFERRED,
  "on" TEXT NOT NULL CHECK ("on" = '' OR "on" BETWEEN '1900' AND '2199-12-31'),
  amount_cents INTEGER NOT NULL,
  basis TEXT NOT NULL
) STRICT, WITHOUT ROWID;
INSERT INTO valuation VALUES(X'01a21609c365778183fcaadd2b1d1fc8',X'01a21609c32975478c3ce68ec1832368','2026-09-27',9000,'Two sales of the same design this year');
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
INSERT INTO photo VALUES(X'01a21609c32a749eac76c5572ec18763',X'01a21609c32975478c3ce682bdc41a69',NULL,NULL,'b8e50faf7f5d746a910d099f3a2bd9952c30f3356fe61ff79ceffc40fcc6cee9','jpg',800,600,'2024-12-26',464,'2024-12-26','overview','The corner by the cell',0);
INSERT INTO photo VALUES(X'01a21609c3c3713ba45f02e6aaaaa6a0',X'01a21609c32975478c3ce6a3b80efdcf',NULL,NULL,'139c4360a13b41b245e8e06f80471edcf27b755cdcc4f9ba92e7d973fd37a871','jpg',800,600,'2024-11-16',496,'2024-11-16','overview','As it came',0);
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
INSERT INTO photo_mark VALUES(X'0190163d8694739baea5966c26f8ad92',X'01a21609c32a749eac76c5572ec18763','[]',X'01a21609c32a749eac76c54eb09f1e0c',NULL,NULL,NULL,'all of it','place',NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO photo_mark VALUES(X'01a21609c32a749eac76c558c60a01ac',X'01a21609c32a749eac76c5572ec18763','[[0.8,0.18]]',X'01a21609c32a749eac76c54eb09f1e0c',NULL,NULL,NULL,'','place',NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO photo_mark VALUES(X'01a21609c3c3713ba45f02e7c083f265',X'01a21609c3c3713ba45f02e6aaaaa6a0','[[0.8,0.19]]',X'01a21609c3c3713ba45f02d8e9e5ccad',NULL,NULL,NULL,'','place',NULL,NULL,NULL,NULL,NULL,NULL,NULL);
INSERT INTO photo_mark VALUES(X'01a21609c3c3713ba45f02e8eaefc8b3',X'01a21609c3c3713ba45f02e6aaaaa6a0','[[0.74,0.12]]',X'01a21609c3c3713ba45f02da5be4fba4',NULL,NULL,NULL,'','place',NULL,NULL,NULL,NULL,NULL,NULL,NULL);
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
INSERT INTO attachment VALUES(X'01a21609c32a749eac76c559f09e2fb4',X'01a21609c32975478c3ce682bdc41a69',NULL,NULL,'firmware_image','962e6d7ca8dcf3fdfb665d2a66f54ced300e420cc2364c21309f83bc319bf896','a286-odd.bin',34,'2024-12-26',571,'Two chips: this is the odd one.',NULL);
CREATE TABLE work_after (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  part BLOB NOT NULL REFERENCES part DEFERRABLE INITIALLY DEFERRED,
  work BLOB NOT NULL REFERENCES work DEFERRABLE INITIALLY DEFERRED,
  "after" BLOB NOT NULL REFERENCES work DEFERRABLE INITIALLY DEFERRED
) STRICT, WITHOUT ROWID;
INSERT INTO work_after VALUES(X'51fe10b029c04ce9ad284a801454c0c4',X'01a21609c32975478c3ce682bdc41a69',X'dc509db770094c3aaa302a33b0d13987',X'01a21609c32a749eac76c55139aec4f1');
CREATE TABLE material_use (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  part BLOB NOT NULL REFERENCES part DEFERRABLE INITIALLY DEFERRED,
  work BLOB NOT NULL REFERENCES work DEFERRABLE INITIALLY DEFERRED,
  material BLOB NOT NULL REFERENCES material DEFERRABLE INITIALLY DEFERRED,
  amount REAL NOT NULL CHECK (amount > 0)
) STRICT, WITHOUT ROWID;
INSERT INTO material_use VALUES(X'8953aba5462641cbaef67c46b1d8b6b8',X'01a21609c32975478c3ce682bdc41a69',X'01a21609c32a749eac76c55139aec4f1',X'01a21609c310775a893a9214192d4399',2.5);
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
                   VALUES ((SELECT max(number) FROM change), 'design_figure', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'design', iif(NEW."design" IS NULL, NULL, lower(hex(NEW."design"))), 'figure', NEW."figure", 'value', NEW."value", 'source', NEW."source"));
                 END;
CREATE TRIGGER history_design_figure_update AFTER UPDATE ON design_figure WHEN OLD."id" IS NOT NEW."id" OR OLD."design" IS NOT NEW."design" OR OLD."figure" IS NOT NEW."figure" OR OLD."value" IS NOT NEW."value" OR OLD."source" IS NOT NEW."source" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'design_figure', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'design', iif(OLD."design" IS NULL, NULL, lower(hex(OLD."design"))), 'figure', OLD."figure", 'value', OLD."value", 'source', OLD."source"), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'design', iif(NEW."design" IS NULL, NULL, lower(hex(NEW."design"))), 'figure', NEW."figure", 'value', NEW."value", 'source', NEW."source"));
                 END;
CREATE TRIGGER history_design_figure_delete AFTER DELETE ON design_figure  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'design_figure', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'design', iif(OLD."design" IS NULL, NULL, lower(hex(OLD."design"))), 'figure', OLD."figure", 'value', OLD."value", 'source', OLD."source"), NULL);
                 END;
CREATE TRIGGER history_material_insert AFTER INSERT ON material  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'material', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'name', NEW."name", 'unit', NEW."unit", 'stock', NEW."stock", 'minimum', NEW."minimum", 'place', iif(NEW."place" IS NULL, NULL, lower(hex(NEW."place"))), 'price_cents', NEW."price_cents", 'supplier', NEW."supplier", 'note', NEW."note"));
                 END;
CREATE TRIGGER history_material_update AFTER UPDATE ON material WHEN OLD."id" IS NOT NEW."id" OR OLD."name" IS NOT NEW."name" OR OLD."unit" IS NOT NEW."unit" OR OLD."stock" IS NOT NEW."stock" OR OLD."minimum" IS NOT NEW."minimum" OR OLD."place" IS NOT NEW."place" OR OLD."price_cents" IS NOT NEW."price_cents" OR OLD."supplier" IS NOT NEW."supplier" OR OLD."note" IS NOT NEW."note" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'material', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'name', OLD."name", 'unit', OLD."unit", 'stock', OLD."stock", 'minimum', OLD."minimum", 'place', iif(OLD."place" IS NULL, NULL, lower(hex(OLD."place"))), 'price_cents', OLD."price_cents", 'supplier', OLD."supplier", 'note', OLD."note"), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'name', NEW."name", 'unit', NEW."unit", 'stock', NEW."stock", 'minimum', NEW."minimum", 'place', iif(NEW."place" IS NULL, NULL, lower(hex(NEW."place"))), 'price_cents', NEW."price_cents", 'supplier', NEW."supplier", 'note', NEW."note"));
                 END;
CREATE TRIGGER history_material_delete AFTER DELETE ON material  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'material', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'name', OLD."name", 'unit', OLD."unit", 'stock', OLD."stock", 'minimum', OLD."minimum", 'place', iif(OLD."place" IS NULL, NULL, lower(hex(OLD."place"))), 'price_cents', OLD."price_cents", 'supplier', OLD."supplier", 'note', OLD."note"), NULL);
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
                   VALUES ((SELECT max(number) FROM change), 'role', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'machine', iif(NEW."machine" IS NULL, NULL, lower(hex(NEW."machine"))), 'kind', NEW."kind", 'name', NEW."name", 'required', NEW."required", 'count', NEW."count", 'note', NEW."note"));
                 END;
CREATE TRIGGER history_role_update AFTER UPDATE ON role WHEN OLD."id" IS NOT NEW."id" OR OLD."machine" IS NOT NEW."machine" OR OLD."kind" IS NOT NEW."kind" OR OLD."name" IS NOT NEW."name" OR OLD."required" IS NOT NEW."required" OR OLD."count" IS NOT NEW."count" OR OLD."note" IS NOT NEW."note" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'role', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'machine', iif(OLD."machine" IS NULL, NULL, lower(hex(OLD."machine"))), 'kind', OLD."kind", 'name', OLD."name", 'required', OLD."required", 'count', OLD."count", 'note', OLD."note"), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'machine', iif(NEW."machine" IS NULL, NULL, lower(hex(NEW."machine"))), 'kind', NEW."kind", 'name', NEW."name", 'required', NEW."required", 'count', NEW."count", 'note', NEW."note"));
                 END;
CREATE TRIGGER history_role_delete AFTER DELETE ON role  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'role', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'machine', iif(OLD."machine" IS NULL, NULL, lower(hex(OLD."machine"))), 'kind', OLD."kind", 'name', OLD."name", 'required', OLD."required", 'count', OLD."count", 'note', OLD."note"), NULL);
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
                   VALUES ((SELECT max(number) FROM change), 'work', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'part', iif(NEW."part" IS NULL, NULL, lower(hex(NEW."part"))), 'finding', iif(NEW."finding" IS NULL, NULL, lower(hex(NEW."finding"))), 'rule', NEW."rule", 'title', NEW."title", 'hold', NEW."hold", 'nature', NEW."nature", 'state', NEW."state", 'changed_on', NEW."changed_on", 'changed_sequence', NEW."changed_sequence", 'who', NEW."who", 'minutes', NEW."minutes", 'used', NEW."used", 'reason', NEW."reason", 'reversible', NEW."reversible", 'note', NEW."note"));
                 END;
CREATE TRIGGER history_work_update AFTER UPDATE ON work WHEN OLD."id" IS NOT NEW."id" OR OLD."part" IS NOT NEW."part" OR OLD."finding" IS NOT NEW."finding" OR OLD."rule" IS NOT NEW."rule" OR OLD."title" IS NOT NEW."title" OR OLD."hold" IS NOT NEW."hold" OR OLD."nature" IS NOT NEW."nature" OR OLD."state" IS NOT NEW."state" OR OLD."changed_on" IS NOT NEW."changed_on" OR OLD."changed_sequence" IS NOT NEW."changed_sequence" OR OLD."who" IS NOT NEW."who" OR OLD."minutes" IS NOT NEW."minutes" OR OLD."used" IS NOT NEW."used" OR OLD."reason" IS NOT NEW."reason" OR OLD."reversible" IS NOT NEW."reversible" OR OLD."note" IS NOT NEW."note" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'work', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'part', iif(OLD."part" IS NULL, NULL, lower(hex(OLD."part"))), 'finding', iif(OLD."finding" IS NULL, NULL, lower(hex(OLD."finding"))), 'rule', OLD."rule", 'title', OLD."title", 'hold', OLD."hold", 'nature', OLD."nature", 'state', OLD."state", 'changed_on', OLD."changed_on", 'changed_sequence', OLD."changed_sequence", 'who', OLD."who", 'minutes', OLD."minutes", 'used', OLD."used", 'reason', OLD."reason", 'reversible', OLD."reversible", 'note', OLD."note"), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'part', iif(NEW."part" IS NULL, NULL, lower(hex(NEW."part"))), 'finding', iif(NEW."finding" IS NULL, NULL, lower(hex(NEW."finding"))), 'rule', NEW."rule", 'title', NEW."title", 'hold', NEW."hold", 'nature', NEW."nature", 'state', NEW."state", 'changed_on', NEW."changed_on", 'changed_sequence', NEW."changed_sequence", 'who', NEW."who", 'minutes', NEW."minutes", 'used', NEW."used", 'reason', NEW."reason", 'reversible', NEW."reversible", 'note', NEW."note"));
                 END;
CREATE TRIGGER history_work_delete AFTER DELETE ON work  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'work', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'part', iif(OLD."part" IS NULL, NULL, lower(hex(OLD."part"))), 'finding', iif(OLD."finding" IS NULL, NULL, lower(hex(OLD."finding"))), 'rule', OLD."rule", 'title', OLD."title", 'hold', OLD."hold", 'nature', OLD."nature", 'state', OLD."state", 'changed_on', OLD."changed_on", 'changed_sequence', OLD."changed_sequence", 'who', OLD."who", 'minutes', OLD."minutes", 'used', OLD."used", 'reason', OLD."reason", 'reversible', OLD."reversible", 'note', OLD."note"), NULL);
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
                   VALUES ((SELECT max(number) FROM change), 'look', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'finding', iif(NEW."finding" IS NULL, NULL, lower(hex(NEW."finding"))), 'looked_on', NEW."looked_on", 'looked_sequence', NEW."looked_sequence", 'state', NEW."state", 'severity', NEW."severity", 'share_percent', NEW."share_percent", 'again_by', NEW."again_by", 'reason', NEW."reason", 'survey', iif(NEW."survey" IS NULL, NULL, lower(hex(NEW."survey"))), 'work', iif(NEW."work" IS NULL, NULL, lower(hex(NEW."work")))));
                 END;
CREATE TRIGGER history_look_update AFTER UPDATE ON look WHEN OLD."id" IS NOT NEW."id" OR OLD."finding" IS NOT NEW."finding" OR OLD."looked_on" IS NOT NEW."looked_on" OR OLD."looked_sequence" IS NOT NEW."looked_sequence" OR OLD."state" IS NOT NEW."state" OR OLD."severity" IS NOT NEW."severity" OR OLD."share_percent" IS NOT NEW."share_percent" OR OLD."again_by" IS NOT NEW."again_by" OR OLD."reason" IS NOT NEW."reason" OR OLD."survey" IS NOT NEW."survey" OR OLD."work" IS NOT NEW."work" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'look', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'finding', iif(OLD."finding" IS NULL, NULL, lower(hex(OLD."finding"))), 'looked_on', OLD."looked_on", 'looked_sequence', OLD."looked_sequence", 'state', OLD."state", 'severity', OLD."severity", 'share_percent', OLD."share_percent", 'again_by', OLD."again_by", 'reason', OLD."reason", 'survey', iif(OLD."survey" IS NULL, NULL, lower(hex(OLD."survey"))), 'work', iif(OLD."work" IS NULL, NULL, lower(hex(OLD."work")))), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'finding', iif(NEW."finding" IS NULL, NULL, lower(hex(NEW."finding"))), 'looked_on', NEW."looked_on", 'looked_sequence', NEW."looked_sequence", 'state', NEW."state", 'severity', NEW."severity", 'share_percent', NEW."share_percent", 'again_by', NEW."again_by", 'reason', NEW."reason", 'survey', iif(NEW."survey" IS NULL, NULL, lower(hex(NEW."survey"))), 'work', iif(NEW."work" IS NULL, NULL, lower(hex(NEW."work")))));
                 END;
CREATE TRIGGER history_look_delete AFTER DELETE ON look  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'look', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'finding', iif(OLD."finding" IS NULL, NULL, lower(hex(OLD."finding"))), 'looked_on', OLD."looked_on", 'looked_sequence', OLD."looked_sequence", 'state', OLD."state", 'severity', OLD."severity", 'share_percent', OLD."share_percent", 'again_by', OLD."again_by", 'reason', OLD."reason", 'survey', iif(OLD."survey" IS NULL, NULL, lower(hex(OLD."survey"))), 'work', iif(OLD."work" IS NULL, NULL, lower(hex(OLD."work")))), NULL);
                 END;
CREATE TRIGGER history_capacitor_insert AFTER INSERT ON capacitor  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'capacitor', NEW.id, NULL, json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'part', iif(NEW."part" IS NULL, NULL, lower(hex(NEW."part"))), 'designator', NEW."designator", 'place_on_part', NEW."place_on_part", 'capacitance_uf', NEW."capacitance_uf", 'voltage_v', NEW."voltage_v", 'temperature_c', NEW."temperature_c", 'diameter_mm', NEW."diameter_mm", 'height_mm', NEW."height_mm", 'pitch_mm', NEW."pitch_mm", 'dielectric', NEW."dielectric", 'mounting', NEW."mounting", 'series', NEW."series", 'polarity', NEW."polarity", 'logged_on', NEW."logged_on", 'logged_sequence', NEW."logged_sequence", 'state', NEW."state"));
                 END;
CREATE TRIGGER history_capacitor_update AFTER UPDATE ON capacitor WHEN OLD."id" IS NOT NEW."id" OR OLD."part" IS NOT NEW."part" OR OLD."designator" IS NOT NEW."designator" OR OLD."place_on_part" IS NOT NEW."place_on_part" OR OLD."capacitance_uf" IS NOT NEW."capacitance_uf" OR OLD."voltage_v" IS NOT NEW."voltage_v" OR OLD."temperature_c" IS NOT NEW."temperature_c" OR OLD."diameter_mm" IS NOT NEW."diameter_mm" OR OLD."height_mm" IS NOT NEW."height_mm" OR OLD."pitch_mm" IS NOT NEW."pitch_mm" OR OLD."dielectric" IS NOT NEW."dielectric" OR OLD."mounting" IS NOT NEW."mounting" OR OLD."series" IS NOT NEW."series" OR OLD."polarity" IS NOT NEW."polarity" OR OLD."logged_on" IS NOT NEW."logged_on" OR OLD."logged_sequence" IS NOT NEW."logged_sequence" OR OLD."state" IS NOT NEW."state" BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'capacitor', NEW.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'part', iif(OLD."part" IS NULL, NULL, lower(hex(OLD."part"))), 'designator', OLD."designator", 'place_on_part', OLD."place_on_part", 'capacitance_uf', OLD."capacitance_uf", 'voltage_v', OLD."voltage_v", 'temperature_c', OLD."temperature_c", 'diameter_mm', OLD."diameter_mm", 'height_mm', OLD."height_mm", 'pitch_mm', OLD."pitch_mm", 'dielectric', OLD."dielectric", 'mounting', OLD."mounting", 'series', OLD."series", 'polarity', OLD."polarity", 'logged_on', OLD."logged_on", 'logged_sequence', OLD."logged_sequence", 'state', OLD."state"), json_object('id', iif(NEW."id" IS NULL, NULL, lower(hex(NEW."id"))), 'part', iif(NEW."part" IS NULL, NULL, lower(hex(NEW."part"))), 'designator', NEW."designator", 'place_on_part', NEW."place_on_part", 'capacitance_uf', NEW."capacitance_uf", 'voltage_v', NEW."voltage_v", 'temperature_c', NEW."temperature_c", 'diameter_mm', NEW."diameter_mm", 'height_mm', NEW."height_mm", 'pitch_mm', NEW."pitch_mm", 'dielectric', NEW."dielectric", 'mounting', NEW."mounting", 'series', NEW."series", 'polarity', NEW."polarity", 'logged_on', NEW."logged_on", 'logged_sequence', NEW."logged_sequence", 'state', NEW."state"));
                 END;
CREATE TRIGGER history_capacitor_delete AFTER DELETE ON capacitor  BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), 'capacitor', OLD.id, json_object('id', iif(OLD."id" IS NULL, NULL, lower(hex(OLD."id"))), 'part', iif(OLD."part" IS NULL, NULL, lower(hex(OLD."part"))), 'designator', OLD."designator", 'place_on_part', OLD."place_on_part", 'capacitance_uf', OLD."capacitance_uf", 'voltage_v', OLD."voltage_v", 'temperature_c', OLD."temperature_c", 'diameter_mm', OLD."diameter_mm", 'height_mm', OLD."height_mm", 'pitch_mm', OLD."pitch_mm", 'dielectric', OLD."dielectric", 'mounting', OLD."mounting", 'series', OLD."series", 'polarity', OLD."polarity", 'logged_on', OLD."logged_on", 'logged_sequence', OLD."logged_sequence", 'state', OLD."state"), NULL);
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
PRAGMA user_version = 3;
