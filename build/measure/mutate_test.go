package measure

import (
	"os"
	"path/filepath"
	"slices"
	"testing"
	"time"
)

const sum = `package sum

func Sum(list []int) int {
	total := 0
	for _, x := range list {
		if x > 9 {
			total = 0
		}
		total += x
	}
	return total
}
`

func TestMutantsOfAFile(t *testing.T) {
	all, err := mutantsIn("sum.go", []byte(sum))
	if err != nil {
		t.Fatal(err)
	}
	var changes []string
	for _, m := range all {
		changes = append(changes, m.change)
		if string(m.body) == sum {
			t.Errorf("%q changes nothing", m.change)
		}
	}
	slices.Sort(changes)
	want := []string{"0 is one more", "0 is one more", "9 is one more", "> is <=", "> is >=", "the condition is negated",
		"the statement is removed", "the statement is removed"}
	if !slices.Equal(changes, want) {
		t.Errorf("the mutants are %q, not %q", changes, want)
	}
}

// The test knows that 1 and 2 make 3, and nothing of what is over 9.
func TestMutantsAreCaughtByTheTestsThatThereAre(t *testing.T) {
	root := t.TempDir()
	for name, body := range map[string]string{
		"go.mod":     "module example.org/sum\n",
		"sum/sum.go": sum,
		"sum/sum_test.go": "package sum\n\nimport \"testing\"\n\nfunc TestSum(t *testing.T) {\n" +
			"\tif got := Sum([]int{1, 2}); got != 3 {\n\t\tt.Error(got)\n\t}\n}\n",
	} {
		path := filepath.Join(root, name)
		if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(path, []byte(body), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	all, err := mutantsOf(filepath.Join(root, "sum"))
	if err != nil {
		t.Fatal(err)
	}
	all = append(all, mutant{file: all[0].file, body: []byte("package sum\n")})
	forever := mutant{file: all[0].file, body: []byte("package sum\n\nfunc Sum([]int) int {\n\tfor {\n\t}\n}\n")}
	if end, err := forever.test(root, "sum", nil, 2*time.Second); end != endless || err != nil {
		t.Errorf("a mutant without an end is %s, %v", end, err)
	}
	got := map[outcome]int{}
	for _, m := range all {
		end, err := m.test(root, "sum", []string{"TestSum"}, time.Minute)
		if err != nil {
			t.Fatal(err)
		}
		got[end]++
	}
	// Alive are another limit than 9, no start from 0 there, a start from 1 there,
	// and >= for >; caught are a start from 1, both wrong conditions, and no sum.
	if got[survived] != 4 || got[caught] != 4 || got[invalid] != 1 {
		t.Errorf("of %d mutants the outcomes are %v", len(all), got)
	}
}
