package measure

import (
	"bytes"
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"go/ast"
	"go/parser"
	"go/printer"
	"go/token"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"time"
)

// timesAsLong is how many times as long a mutant's tests may take as those of the
// unchanged package, and they may take a minute at least. A mutant whose tests are ended
// then is caught, and counted apart: on a busy machine it may only have been slow.
const timesAsLong = 3

// slowTest is from what time on a test waits until all the quicker ones have passed.
const slowTest = time.Second

// Mutate changes a package's sources in one place at a time, runs the package's
// tests on each changed copy, and prints the changes that no test noticed. It
// takes n places by chance, the same for the same seed, or all of them if n is 0.
// What does not compile is not counted. The sources on the disk stay as they are.
func Mutate(root, pkg string, n int, seed uint64) error {
	began := time.Now()
	slow, err := slowTests(root, pkg)
	if err != nil {
		return fmt.Errorf("the tests fail before anything is changed: %w", err)
	}
	limit := max(time.Minute, timesAsLong*time.Since(began))
	all, err := mutantsOf(filepath.Join(root, pkg))
	if err != nil {
		return err
	}
	rand.New(rand.NewPCG(seed, 0)).Shuffle(len(all), func(i, j int) { all[i], all[j] = all[j], all[i] })
	tested, alive, ended := 0, 0, 0
	for i := 0; i < len(all) && (n == 0 || tested < n); i++ {
		m := all[i]
		outcome, err := m.test(root, pkg, slow, limit)
		if err != nil {
			return err
		}
		if outcome == invalid {
			continue
		}
		tested++
		switch outcome {
		case survived:
			alive++
		case endless:
			ended++
		default:
			continue
		}
		fmt.Printf("%s  %s:%d  %s\n", outcome, filepath.Join(pkg, filepath.Base(m.file)), m.line, m.change)
	}
	fmt.Printf("%d of %d mutants of %s are alive; %d of the others ended by the time limit\n", alive, tested, pkg, ended)
	return nil
}

// slowTests runs a package's tests as they are, and names those that take long.
func slowTests(root, pkg string) (slow []string, err error) {
	cmd := exec.Command("go", "test", "-count=1", "-json", "./"+pkg)
	cmd.Dir = root
	said, err := cmd.Output()
	if err != nil {
		return nil, fmt.Errorf("%w\n%s", err, said)
	}
	for event := range bytes.Lines(said) {
		var of struct {
			Action, Test string
			Elapsed      float64
		}
		if err := json.Unmarshal(event, &of); err != nil {
			return nil, err
		}
		if of.Action == "pass" && of.Test != "" && !strings.Contains(of.Test, "/") && of.Elapsed >= slowTest.Seconds() {
			slow = append(slow, of.Test)
		}
	}
	return slow, nil
}

// mutant is a source file with one change.
type mutant struct {
	file   string
	line   int
	change string // what was and what is
	body   []byte
}

// mutantsOf makes all mutants of the Go files in a folder, without its tests.
func mutantsOf(dir string) (all []mutant, err error) {
	files, err := filepath.Glob(filepath.Join(dir, "*.go"))
	if err != nil {
		return nil, err
	}
	for _, file := range files {
		if strings.HasSuffix(file, "_test.go") {
			continue
		}
		source, err := os.ReadFile(file)
		if err != nil {
			return nil, err
		}
		more, err := mutantsIn(file, source)
		if err != nil {
			return nil, err
		}
		all = append(all, more...)
	}
	if len(all) == 0 {
		err = fmt.Errorf("%s has no Go code that could be changed", dir)
	}
	return all, err
}

// mutantsIn makes the mutants of one file.
func mutantsIn(file string, source []byte) (all []mutant, err error) {
	set := token.NewFileSet()
	tree, err := parser.ParseFile(set, file, source, parser.ParseComments)
	if err != nil {
		return nil, err
	}
	// note prints the file as it is now changed.
	note := func(at token.Pos, change string) {
		var b bytes.Buffer
		if printing := printer.Fprint(&b, set, tree); printing != nil {
			err = errors.Join(err, printing)
			return
		}
		all = append(all, mutant{file, set.Position(at).Line, change, b.Bytes()})
	}
	ast.Inspect(tree, func(node ast.Node) bool {
		switch node := node.(type) {
		case *ast.ImportSpec, *ast.Field:
			return false // paths, and the lengths and tags of types
		case *ast.BinaryExpr:
			was := node.Op
			for _, op := range operators[was] {
				node.Op = op
				note(node.OpPos, was.String()+" is "+op.String())
			}
			node.Op = was
		case *ast.BasicLit:
			was := node.Value
			if node.Kind == token.INT || node.Kind == token.FLOAT {
				node.Value = "(" + was + "+1)"
				note(node.Pos(), was+" is one more")
			}
			node.Value = was
		case *ast.IfStmt:
			was := node.Cond
			node.Cond = &ast.UnaryExpr{Op: token.NOT, X: &ast.ParenExpr{X: was}}
			note(was.Pos(), "the condition is negated")
			node.Cond = was
		case *ast.BlockStmt:
			for i, was := range node.List {
				if removable(was) {
					node.List[i] = &ast.EmptyStmt{Semicolon: was.Pos()}
					note(was.Pos(), "the statement is removed")
					node.List[i] = was
				}
			}
		}
		return true
	})
	return all, err
}

// operators are by what each operator is replaced.
var operators = map[token.Token][]token.Token{
	token.ADD: {token.SUB}, token.SUB: {token.ADD}, token.MUL: {token.QUO}, token.QUO: {token.MUL},
	token.LSS: {token.LEQ, token.GEQ}, token.LEQ: {token.LSS, token.GTR}, token.GTR: {token.GEQ, token.LEQ}, token.GEQ: {token.GTR, token.LSS},
	token.EQL: {token.NEQ}, token.NEQ: {token.EQL}, token.LAND: {token.LOR}, token.LOR: {token.LAND},
}

// removable says whether a program can still compile without a statement.
func removable(s ast.Stmt) bool {
	switch s := s.(type) {
	case *ast.AssignStmt:
		return s.Tok != token.DEFINE
	case *ast.ExprStmt, *ast.IncDecStmt, *ast.BranchStmt:
		return true
	}
	return false
}

// outcome is what the tests made of a mutant.
type outcome string

const (
	caught   outcome = "caught"
	survived outcome = "alive"
	endless  outcome = "ended by the time limit"
	invalid  outcome = "does not compile"
)

// test compiles the package's tests with the mutant instead of its file and runs
// them, those that are slow last: most mutants are caught without them.
func (m mutant) test(root, pkg string, slow []string, limit time.Duration) (outcome, error) {
	dir, err := os.MkdirTemp("", "saltbite-mutant-")
	if err != nil {
		return "", err
	}
	defer os.RemoveAll(dir)
	body, overlay, tests := filepath.Join(dir, "mutant.go"), filepath.Join(dir, "overlay.json"), filepath.Join(dir, "mutant.test")
	list, _ := json.Marshal(map[string]map[string]string{"Replace": {m.file: body}}) // texts always can
	if err := errors.Join(os.WriteFile(body, m.body, 0o644), os.WriteFile(overlay, list, 0o644)); err != nil {
		return "", err
	}
	build := exec.Command("go", "test", "-c", "-vet=off", "-overlay", overlay, "-o", tests, "./"+pkg)
	build.Dir = root
	if build.Run() != nil {
		return invalid, nil
	}
	if len(slow) == 0 {
		return ending(tests, filepath.Join(root, pkg), limit)
	}
	late := "^(" + strings.Join(slow, "|") + ")$"
	if end, err := ending(tests, filepath.Join(root, pkg), limit, "-test.skip", late); end != survived {
		return end, err
	}
	return ending(tests, filepath.Join(root, pkg), limit, "-test.run", late)
}

// ending runs compiled tests in their package's folder until they end by
// themselves or by the limit.
func ending(tests, dir string, limit time.Duration, which ...string) (outcome, error) {
	ctx, cancel := context.WithTimeout(context.Background(), limit)
	defer cancel()
	cmd := exec.CommandContext(ctx, tests, append(which, "-test.failfast")...)
	cmd.Dir = dir
	err := cmd.Run()
	failed := new(exec.ExitError)
	switch {
	case err == nil:
		return survived, nil
	case ctx.Err() != nil:
		return endless, nil
	case errors.As(err, &failed):
		return caught, nil
	}
	return "", err
}
