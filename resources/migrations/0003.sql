-- Work in an order by hand, material that work used, what a proof or a piece of work was shown by, codes of a trial.
CREATE TABLE work_after (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  part BLOB NOT NULL REFERENCES part DEFERRABLE INITIALLY DEFERRED,
  work BLOB NOT NULL REFERENCES work DEFERRABLE INITIALLY DEFERRED,
  "after" BLOB NOT NULL REFERENCES work DEFERRABLE INITIALLY DEFERRED
) STRICT, WITHOUT ROWID;

CREATE TABLE material_use (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  part BLOB NOT NULL REFERENCES part DEFERRABLE INITIALLY DEFERRED,
  work BLOB NOT NULL REFERENCES work DEFERRABLE INITIALLY DEFERRED,
  material BLOB NOT NULL REFERENCES material DEFERRABLE INITIALLY DEFERRED,
  amount REAL NOT NULL CHECK (amount > 0)
) STRICT, WITHOUT ROWID;

ALTER TABLE reading ADD COLUMN proof BLOB REFERENCES proof DEFERRABLE INITIALLY DEFERRED;
ALTER TABLE reading ADD COLUMN work BLOB REFERENCES work DEFERRABLE INITIALLY DEFERRED;
ALTER TABLE attachment ADD COLUMN proof BLOB REFERENCES proof DEFERRABLE INITIALLY DEFERRED;
ALTER TABLE photo_mark ADD COLUMN proof BLOB REFERENCES proof DEFERRABLE INITIALLY DEFERRED;
ALTER TABLE trial ADD COLUMN codes TEXT NOT NULL DEFAULT '';

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
