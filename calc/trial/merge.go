package trial

import (
	"slices"
	"strings"
)

// Merged is a log with another in it.
type Merged struct {
	Table
	Added   int // rows that were not there
	Changed int // rows that were there with other cells
}

// Merge puts the rows of another log into this one, each once. A row that has
// the same text in the column key, where that is not blank, is the same run: its
// cells that are not blank take the place of what was there. A row without a key
// is the same run only if all of its cells are. Columns that only the other has
// come last.
func (t Table) Merge(other Table, key string) Merged {
	m := Merged{Table: Table{Columns: slices.Clone(t.Columns)}}
	for _, name := range other.Columns {
		if !slices.Contains(m.Columns, name) {
			m.Columns = append(m.Columns, name)
		}
	}
	at := map[string]int{} // rows by what makes them the same run
	for _, row := range m.widened(t) {
		at[m.identity(row, key)] = len(m.Rows)
		m.Rows = append(m.Rows, row)
	}
	for _, row := range m.widened(other) {
		id := m.identity(row, key)
		i, known := at[id]
		if !known {
			at[id] = len(m.Rows)
			m.Rows = append(m.Rows, row)
			m.Added++
			continue
		}
		if fillIn(m.Rows[i], row) {
			m.Changed++
		}
	}
	return m
}

// widened is the rows of a table with a cell for each column of m.
func (m Merged) widened(t Table) (rows [][]string) {
	for _, row := range t.Rows {
		wide := make([]string, len(m.Columns))
		for i, name := range t.Columns {
			wide[slices.Index(m.Columns, name)] = row[i]
		}
		rows = append(rows, wide)
	}
	return rows
}

// identity is a row's key, or all of its cells.
func (m Merged) identity(row []string, key string) string {
	if i := slices.Index(m.Columns, key); i >= 0 && row[i] != "" {
		return "key\x00" + row[i]
	}
	return "row\x00" + strings.Join(row, "\x00")
}

// fillIn puts the cells that are not blank into a row, and says whether that
// changed it.
func fillIn(row, cells []string) (changed bool) {
	for i, cell := range cells {
		if cell != "" && cell != row[i] {
			row[i], changed = cell, true
		}
	}
	return changed
}
