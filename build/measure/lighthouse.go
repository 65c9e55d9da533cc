package measure

import (
	"encoding/json"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"

	"saltbite/build/site"
	"saltbite/build/tool"
)

// Lighthouse judges a page as its visitors' first impression, in the form it
// takes for a telephone on a slow network.
const (
	chromiumFlags   = "--headless --no-sandbox --disable-gpu --disable-quic --no-first-run --disable-background-networking --disable-component-update --disable-sync"
	fullMarks       = 100.0
	performanceLost = 5.0 // points of 100 that the median of the runs may lose
	performanceRuns = 3
)

// judgement is a page's marks by category, of 100, and what cost some.
type judgement struct {
	marks map[string]float64
	lost  []string
}

// judge serves the site on this machine and has Lighthouse look at it.
func judge(root string, made site.Files, categories ...string) (judgement, error) {
	if err := tool.InstallScripts(root); err != nil {
		return judgement{}, err
	}
	address, stop, err := made.Serve()
	if err != nil {
		return judgement{}, err
	}
	defer stop()
	chromium, err := exec.LookPath("chromium")
	if err != nil {
		return judgement{}, err
	}
	cmd := exec.Command(filepath.Join(root, "site", "node_modules", ".bin", "lighthouse"),
		address, "--quiet", "--output=json", "--form-factor=mobile",
		"--no-enable-error-reporting", "--only-categories="+strings.Join(categories, ","), "--chrome-flags="+chromiumFlags)
	cmd.Env = append(os.Environ(), "CHROME_PATH="+chromium)
	report, err := cmd.Output()
	var exit *exec.ExitError
	if errors.As(err, &exit) {
		return judgement{}, fmt.Errorf("lighthouse: %w\n%s", err, exit.Stderr)
	}
	if err != nil {
		return judgement{}, err
	}
	return readJudgement(report, categories)
}

// readJudgement reads Lighthouse's report. A category without marks is a fault.
func readJudgement(report []byte, categories []string) (judgement, error) {
	var said struct {
		Categories map[string]struct {
			Score     *float64
			AuditRefs []struct {
				ID     string
				Weight float64
			}
		}
		Audits map[string]struct {
			Score *float64
			Title string
		}
	}
	if err := json.Unmarshal(report, &said); err != nil {
		return judgement{}, fmt.Errorf("lighthouse's report: %w", err)
	}
	j := judgement{marks: map[string]float64{}}
	for _, name := range categories {
		category := said.Categories[name]
		if category.Score == nil {
			return judgement{}, fmt.Errorf("lighthouse gave no marks for %s", name)
		}
		j.marks[name] = *category.Score * fullMarks
		for _, audit := range category.AuditRefs {
			if score := said.Audits[audit.ID].Score; audit.Weight > 0 && score != nil && *score < 1 {
				j.lost = append(j.lost, fmt.Sprintf("%s (%.2f)", said.Audits[audit.ID].Title, *score))
			}
		}
	}
	return j, nil
}

// HoldToFullMarks has Lighthouse look at the page and fails unless it gives full
// marks where they don't depend on the time that the machine takes.
func HoldToFullMarks(root string, made site.Files) error {
	j, err := judge(root, made, "accessibility", "best-practices")
	if err != nil {
		return err
	}
	for name, marks := range j.marks {
		if marks < fullMarks {
			return fmt.Errorf("%s has %.0f of 100: %s", name, marks, strings.Join(j.lost, "; "))
		}
	}
	return nil
}

// performance measures the marks that Lighthouse gives for the page's speed.
func (m *measure) performance(root string, made site.Files) error {
	var lost []float64
	for range performanceRuns {
		j, err := judge(root, made, "performance")
		if err != nil {
			return err
		}
		lost = append(lost, fullMarks-j.marks["performance"])
		fmt.Printf("Lighthouse's performance is %.0f; points were lost for %s\n", j.marks["performance"], strings.Join(j.lost, "; "))
	}
	slices.Sort(lost)
	m.hold("points of 100 lost in Lighthouse's performance, median", lost[len(lost)/2], performanceLost, "")
	return nil
}
