// Package measure measures the site: its size, its speed and its latency.
package measure

import (
	"fmt"
	"net/url"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"

	"saltbite/build/site"
	"saltbite/build/tool"
	"saltbite/testdata"
)

// Limits of speed. Every one is measured in the same run as what it is compared
// with, so that a slow machine makes both slow.
const (
	wasmToNative = 8.0  // the same jobs, as WebAssembly in Node to natively
	answerLimit  = 2.0  // ms for the slowest of the jobs that give every answer, through saltbite.mjs in Node
	findLimit    = 1.0  // ms to find a metal, through the same
	drawLimit    = 3.0  // ms for all the drawings of a job, through the same
	longLimit    = 50.0 // ms for a job with 100 kB in a field, through the same
	replyToBare  = 1.6  // from post to reply on the page, median, to a bare page's
	evenToNative = 6.0  // how even a picture will be on 512 cells square, as WebAssembly in Node to natively
	evenLimit    = 2500 // ms for that, as WebAssembly
	evenToHalf   = 5.0  // 1024 cells square to 512, both as WebAssembly
	paintToBare  = 1.6  // from key to painted answer on a slowed page, 95th percentile, to a bare page's
)

// measure collects what was measured against its limit.
type measure struct{ past []string }

// hold prints a figure and notes it if it is past its limit.
func (m *measure) hold(what string, figure, limit float64, unit string) {
	verdict := "ok  "
	if !(figure <= limit) { // a NaN is past every limit
		verdict = "PAST"
		m.past = append(m.past, what)
	}
	fmt.Printf("%s  %-58s %8.3g%s  limit %g%s\n", verdict, what, figure, unit, limit, unit)
}

// Bench measures size, speed and latency of the site, which stands in dist/, and
// fails past a limit. Of the measures it takes those whose name matches a pattern.
func Bench(root string, made site.Files, pattern string) error {
	asked, err := regexp.Compile(pattern)
	if err != nil {
		return fmt.Errorf("-run: %w", err)
	}
	m := &measure{}
	for _, one := range []struct {
		name string
		take func() error
	}{
		{"size", func() error { return m.sizes(root, made) }},
		{"ratio", func() error { return m.ratio(root) }},
		{"even", func() error { return m.even(root) }},
		{"node", func() error { return m.inNode(root) }},
		{"page", func() error { return m.page(root, made) }},
		{"cold", func() error { return m.coldOpen(root, made) }},
		{"lighthouse", func() error { return m.performance(root, made) }},
	} {
		if !asked.MatchString(one.name) {
			continue
		}
		if err := one.take(); err != nil {
			return err
		}
	}
	if len(m.past) > 0 {
		return fmt.Errorf("past the limit: %s", strings.Join(m.past, ", "))
	}
	return nil
}

func (m *measure) sizes(root string, made site.Files) error {
	size, page, err := sizesOf(root, made)
	if err != nil {
		return err
	}
	fmt.Printf("the program has %d bytes, %v\n", len(made["saltbite.wasm"]), size)
	m.hold("program under brotli, to a bare one's", size.ratio(), programToBare, "")
	fmt.Printf("all that the page loads has %v\n", page)
	m.hold("all that the page loads under brotli, to a bare page's", page.ratio(), pageToBare, "")
	script, err := site.ScriptWithoutGlue(root)
	if err != nil {
		return err
	}
	m.hold("page's script, without wasm_exec.js", float64(len(script))/1000, pageScript/1000, " kB")
	shares, err := bytesByPackage(root, "./wasm")
	if err != nil {
		return err
	}
	fmt.Print(topShares(shares, 20))
	return nil
}

// ratio runs one benchmark natively and as WebAssembly, and compares the
// fastest runs, since other work on the machine only makes a run slower.
func (m *measure) ratio(root string) error {
	runner, remove, err := tool.NodeRunner(root)
	if err != nil {
		return err
	}
	defer remove()
	native, err := everything.fastest(root, nil)
	if err != nil {
		return err
	}
	wasm, err := everything.fastest(root, tool.ForWasm, "-exec", runner)
	if err != nil {
		return err
	}
	fmt.Printf("the jobs that give every answer: %.3f ms natively, %.3f ms as WebAssembly\n", native/1e6, wasm/1e6)
	m.hold("WebAssembly to native", wasm/native, wasmToNative, "")
	return nil
}

// even times the solution of a picture on two grids, natively and as WebAssembly.
func (m *measure) even(root string) error {
	runner, remove, err := tool.NodeRunner(root)
	if err != nil {
		return err
	}
	defer remove()
	native, err := solve("512").fastest(root, nil)
	if err != nil {
		return err
	}
	wasm, err := solve("512").fastest(root, tool.ForWasm, "-exec", runner)
	if err != nil {
		return err
	}
	larger, err := solve("1024").fastest(root, tool.ForWasm, "-exec", runner)
	if err != nil {
		return err
	}
	m.hold("how even on 512 cells square, WebAssembly to native", wasm/native, evenToNative, "")
	m.hold("how even on 512 cells square, as WebAssembly", wasm/1e6, evenLimit, " ms")
	m.hold("how even on 1024 cells square, to 512", larger/wasm, evenToHalf, "")
	return nil
}

// benchmark is one of a package, and how long a run of it goes on.
type benchmark struct{ name, dir, time string }

var everything = benchmark{"BenchmarkEverything", "./calc/advice", "0.5s"}

func solve(side string) benchmark {
	return benchmark{"BenchmarkSolve/" + side, "./calc/evenness", "1x"}
}

// fastest is the least time of a run of it, in nanoseconds.
func (b benchmark) fastest(root string, env []string, more ...string) (float64, error) {
	pattern := "^" + strings.ReplaceAll(b.name, "/", "$/^") + "$"
	args := append([]string{"test", "-run", "^$", "-bench", pattern, "-count", "4", "-benchtime", b.time}, more...)
	cmd := exec.Command("go", append(args, b.dir)...)
	cmd.Dir = root
	cmd.Env = append(os.Environ(), env...)
	output, err := cmd.CombinedOutput()
	if err != nil {
		return 0, fmt.Errorf("%w\n%s", err, output)
	}
	least := 0.0
	for _, line := range strings.Split(string(output), "\n") {
		words := strings.Fields(line)
		if len(words) < 4 || !strings.HasPrefix(line, b.name) || words[3] != "ns/op" {
			continue
		}
		if ns, err := strconv.ParseFloat(words[2], 64); err == nil && (least == 0 || ns < least) {
			least = ns
		}
	}
	if least == 0 {
		return 0, fmt.Errorf("the benchmark printed no time\n%s", output)
	}
	return least, nil
}

// inNode measures the calls of saltbite.mjs as a script makes them.
func (m *measure) inNode(root string) error {
	cmd := exec.Command("node", filepath.Join(root, "build", "measure", "pace.mjs"), filepath.Join(root, "dist", "saltbite.mjs"), strings.Join(testdata.Everything, "\n"))
	output, err := cmd.Output()
	if err != nil {
		return fmt.Errorf("measure saltbite.mjs in Node: %w", err)
	}
	figures, err := url.ParseQuery(strings.TrimSpace(string(output)))
	if err != nil {
		return err
	}
	for _, f := range []struct {
		what, name string
		limit      float64
	}{
		{"answer through saltbite.mjs, the slowest job's median", "answer", answerLimit},
		{"find through saltbite.mjs, median", "find", findLimit},
		{"all drawings through saltbite.mjs, the slowest job's median", "draw", drawLimit},
		{"100 kB in the slowest field through saltbite.mjs", "long", longLimit},
	} {
		ms, err := strconv.ParseFloat(figures.Get(f.name), 64)
		if err != nil {
			return fmt.Errorf("%s: %w", f.what, err)
		}
		m.hold(f.what, ms, f.limit, " ms")
	}
	fmt.Println("the slowest field is", figures.Get("slowest"))
	return nil
}
