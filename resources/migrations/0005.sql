-- What was ordered by hand and has not come yet.
ALTER TABLE material ADD COLUMN on_order REAL NOT NULL DEFAULT 0 CHECK (on_order >= 0);
