package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"saltbite/testdata"
)

func TestCatalogueIsUpToDate(t *testing.T) {
	files, err := generate()
	if err != nil {
		t.Fatal(err)
	}
	for name, want := range files {
		got, err := os.ReadFile(filepath.Join("../..", name))
		if err != nil {
			t.Fatal(err)
		}
		if !bytes.Equal(got, want) {
			t.Errorf("%s differs from its tables: run go generate ./calc/metal", name)
		}
	}
}

// What is wrong in a table is said, with the metal it is wrong of.
func TestBadRows(t *testing.T) {
	fine := testdata.Row{"id": "cu", "name": "Copper", "family": "copper", "composition": "Cu:100", "density_g_cm3": "8.94"}
	if text, err := metal(fine, nil); err != nil || !strings.Contains(text, "Density: 8940") {
		t.Errorf("a sound row: %s, %v", text, err)
	}
	for column, bad := range map[string]string{"family": "tin", "composition": "Cu:90;Zn:9", "density_g_cm3": "heavy"} {
		r := testdata.Row{}
		for k, v := range fine {
			r[k] = v
		}
		r[column] = bad
		if _, err := metal(r, nil); err == nil {
			t.Errorf("%s %q passes", column, bad)
		}
	}
	for what, rows := range map[string][]testdata.Row{
		"is not in":  {{"id": "zn", "language": "English", "names": "zinc"}},
		"not one of": {{"id": "cu", "language": "Latin", "names": "cuprum"}},
		"two rows":   {{"id": "cu", "language": "English", "names": "copper"}, {"id": "cu", "language": "English", "names": "Cu"}},
	} {
		if _, err := byMetal(rows, []testdata.Row{fine}); err == nil || !strings.Contains(err.Error(), what) {
			t.Errorf("%v: %v, want %q", rows, err, what)
		}
	}
	if _, err := byMetal(nil, []testdata.Row{fine, fine}); err == nil {
		t.Error("two metals of one id pass")
	}
}
