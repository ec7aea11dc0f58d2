-- Photographs that are a part's map, and marks that measure: what a mark is for, its lengths, the colour in it.
ALTER TABLE photo ADD COLUMN is_map INTEGER NOT NULL DEFAULT 0 CHECK (is_map IN (0, 1));

ALTER TABLE photo_mark ADD COLUMN role TEXT NOT NULL DEFAULT 'place' CHECK (
  role IN ('place', 'surface', 'damage', 'length', 'scale', 'rectangle', 'sample', 'reference', 'hidden'));
ALTER TABLE photo_mark ADD COLUMN length_mm REAL CHECK (length_mm > 0);
ALTER TABLE photo_mark ADD COLUMN breadth_mm REAL CHECK (breadth_mm > 0);
ALTER TABLE photo_mark ADD COLUMN red REAL CHECK (red BETWEEN 0 AND 1);
ALTER TABLE photo_mark ADD COLUMN green REAL CHECK (green BETWEEN 0 AND 1);
ALTER TABLE photo_mark ADD COLUMN blue REAL CHECK (blue BETWEEN 0 AND 1);
ALTER TABLE photo_mark ADD COLUMN clipped_percent REAL CHECK (clipped_percent BETWEEN 0 AND 100);
