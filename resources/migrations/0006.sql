-- What own work touched, who decided on a finding, other kinds that fill a role, the bus clock of a divider.
ALTER TABLE work ADD COLUMN touches TEXT NOT NULL DEFAULT 'unstated'
  CHECK (touches IN ('unstated', 'electrical', 'nothing_electrical'));
ALTER TABLE look ADD COLUMN who TEXT NOT NULL DEFAULT '';
ALTER TABLE role ADD COLUMN or_kinds TEXT NOT NULL DEFAULT '[]' CHECK (json_valid(or_kinds));
ALTER TABLE design_figure ADD COLUMN at_bus_mhz REAL CHECK (at_bus_mhz > 0);
