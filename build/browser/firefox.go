package browser

import (
	"bufio"
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"net"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"sync"
	"time"
)

// startFirefox starts Firefox with its own remote protocol, on a port that it
// chooses and writes into its profile.
func startFirefox(o Options) (*Session, error) {
	s := &Session{}
	dir, remove, err := profile(o.Profile)
	if err != nil {
		return nil, err
	}
	s.ends = append(s.ends, remove)
	if used := os.Getenv(UsedProfile); used != "" && o.Profile == "" {
		if err := os.CopyFS(dir, os.DirFS(used)); err != nil {
			s.Close()
			return nil, err
		}
	}
	if err := os.WriteFile(filepath.Join(dir, "user.js"), []byte(firefoxPrefs(o)), 0o644); err != nil {
		s.Close()
		return nil, err
	}
	// From its release 138 on, the console can only be read with system access.
	written := &output{}
	browser, err := launch(written, []string{"MOZ_HEADLESS=1"}, "firefox-esr", "--headless", "--marionette",
		"--remote-allow-system-access", "--no-remote", "--profile", dir)
	if err != nil {
		s.Close()
		return nil, err
	}
	s.ends = append(s.ends, browser.end)
	wire, err := dialMarionette(filepath.Join(dir, portFile), 30*time.Second)
	if err != nil {
		s.Close()
		return nil, err
	}
	s.wire = wire
	s.ends = append(s.ends, func() {
		s.do(command{marionette: "Marionette:Quit"}, params{"flags": []string{"eForceQuit"}}, nil)
		wire.conn.Close()
		browser.wait(10 * time.Second) // it writes down what pages keep
	})
	if err := s.do(command{marionette: "WebDriver:NewSession"}, params{}, nil); err != nil {
		s.Close()
		return nil, err
	}
	s.console = func() ([]string, error) { return firefoxConsole(s, written) }
	s.scheme = func(dark bool) error { return firefoxScheme(s, dark) }
	s.forced = func() error { return firefoxForced(s) }
	s.sheet = func() ([]byte, error) { return firefoxSheet(s, filepath.Join(dir, "sheet.pdf")) }
	s.renew = func() error { return renewFirefox(s) }
	return s, nil
}

// UsedProfile is the variable of the environment that names a folder made by
// UseProfile: every new profile of Firefox then begins as a copy of it.
const UsedProfile = "SALTBITE_FIREFOX"

// UseProfile has Firefox use a new profile once. To start on an empty one costs it 5 s
// of a processor, and on a copy of a used one half of that.
func UseProfile() (dir string, remove func(), err error) {
	dir, remove, err = profile("")
	if err != nil {
		return "", nil, err
	}
	s, err := Start(Firefox, Options{Profile: dir})
	if err != nil {
		remove()
		return "", nil, err
	}
	s.Close()
	// What says that a Firefox runs there, and where to reach it.
	for _, name := range []string{portFile, "lock", ".parentlock"} {
		if err := os.Remove(filepath.Join(dir, name)); err != nil && !errors.Is(err, fs.ErrNotExist) {
			remove()
			return "", nil, err
		}
	}
	return dir, remove, nil
}

// portFile is where Firefox writes the port that it chose.
const portFile = "MarionetteActivePort"

// schemeOf is how Firefox numbers colour schemes.
func schemeOf(dark bool) int {
	if dark {
		return 0
	}
	return 1
}

// sparingFrames are how many frames a second a sparing Firefox paints, in the place of
// 60: without a graphics card each costs its parent process some milliseconds.
const sparingFrames = 20

func firefoxPrefs(o Options) string {
	prefs := map[string]any{
		"marionette.port": 0,
		"layout.css.prefers-color-scheme.content-override": schemeOf(o.Dark),
		"devtools.console.stdout.content":                  true,
		"app.update.auto":                                  false,
		"app.normandy.enabled":                             false,
		"browser.shell.checkDefaultBrowser":                false,
		"browser.startup.page":                             0,
		"browser.aboutwelcome.enabled":                     false,
		"datareporting.policy.dataSubmissionEnabled":       false,
		"datareporting.healthreport.uploadEnabled":         false,
		"network.captive-portal-service.enabled":           false,
		"network.connectivity-service.enabled":             false,
		"toolkit.telemetry.enabled":                        false,
		"extensions.getAddons.cache.enabled":               false,
		"javascript.options.wasm_optimizingjit":            !o.Sparing,
	}
	if o.Sparing {
		prefs["layout.frame_rate"] = sparingFrames
	}
	var lines strings.Builder
	for name, value := range prefs {
		text, _ := json.Marshal(value) // numbers, booleans and strings can always be encoded
		fmt.Fprintf(&lines, "user_pref(%q, %s);\n", name, text)
	}
	return lines.String()
}

// firefoxConsole takes what pages wrote, which Firefox copies to its output, and
// what the engine said of them, which it keeps.
func firefoxConsole(s *Session, written *output) ([]string, error) {
	var said []string
	err := inChrome(s, &said, `
		const said = Services.console.getMessageArray().filter(m => m instanceof Ci.nsIScriptError && /^(https?|blob|file|data):/.test(m.sourceName))
		Services.console.reset()
		return said.map(m => m.toString())`)
	lines := slices.DeleteFunc(written.take("console."), isBrowsersOwn)
	return append(lines, said...), err
}

// browsersOwn is how lines start that Firefox prints about itself: when its
// settings server can't be reached, and when it loads its own repairs for certain
// websites.
var browsersOwn = []string{
	"console.error: RSLoader",
	`console.info: "Registered still-not-active content scripts for`,
	`console.info: "Enabled UA override for`,
	`console.warn: "Skipping"`,
}

func isBrowsersOwn(line string) bool {
	return slices.ContainsFunc(browsersOwn, func(start string) bool { return strings.HasPrefix(line, start) })
}

func firefoxScheme(s *Session, dark bool) error {
	return inChrome(s, nil, `Services.prefs.setIntPref("layout.css.prefers-color-scheme.content-override", arguments[0])`, schemeOf(dark))
}

// firefoxForced has all pages in the colours of the system (2: always).
func firefoxForced(s *Session) error {
	return inChrome(s, nil, `Services.prefs.setIntPref("browser.display.document_color_use", 2)`)
}

// renewFirefox leaves one new tab, light and in a page's own colours, and forgets all
// that pages have kept and written.
func renewFirefox(s *Session) error {
	tab, err := s.NewTab()
	if err != nil {
		return err
	}
	if err := s.SwitchTo(tab); err != nil {
		return err
	}
	err = inChrome(s, nil, `
		const wanted = gBrowser.selectedTab
		gBrowser.removeAllTabsBut(wanted, { animate: false, skipWarnAboutClosingTabs: true })
		Services.prefs.clearUserPref("browser.display.document_color_use")
		return new Promise((resolve) => Services.clearData.deleteData(Ci.nsIClearDataService.CLEAR_ALL, { onDataDeleted: () => resolve(true) }))`)
	_, unread := s.Console()
	return errors.Join(err, s.Dark(false), unread)
}

// firefoxSheet prints into a file as the browser's own "save to PDF" does; its
// protocol's command prints on a sheet of its own choice.
func firefoxSheet(s *Session, path string) ([]byte, error) {
	err := inChrome(s, nil, `
		const settings = Cc["@mozilla.org/gfx/printsettings-service;1"].getService(Ci.nsIPrintSettingsService).createNewPrintSettings()
		settings.isInitializedFromPrinter = settings.isInitializedFromPrefs = true
		settings.outputDestination = Ci.nsIPrintSettings.kOutputDestinationFile
		settings.outputFormat = Ci.nsIPrintSettings.kOutputFormatPDF
		settings.toFileName = arguments[0]
		settings.printSilent = settings.honorPageRuleMargins = settings.usePageRuleSizeAsPaperSize = true
		for (const place of ["Left", "Center", "Right"]) settings["headerStr" + place] = settings["footerStr" + place] = ""
		return gBrowser.selectedBrowser.browsingContext.print(settings)`, path)
	if err != nil {
		return nil, err
	}
	return os.ReadFile(path)
}

// inChrome runs a script in the browser itself instead of the page.
func inChrome(s *Session, to any, script string, args ...any) error {
	if err := setContext(s, "chrome"); err != nil {
		return err
	}
	err := s.ExecuteTo(to, script, args...)
	if back := setContext(s, "content"); err == nil {
		err = back
	}
	return err
}

func setContext(s *Session, context string) error {
	return s.do(command{marionette: "Marionette:SetContext"}, params{"value": context}, nil)
}

// marionette is Firefox's wire: frames of "length:json", a request
// [0, id, name, parameters], an answer [1, id, error, result].
type marionette struct {
	mu   sync.Mutex
	conn net.Conn
	in   *bufio.Reader
	id   int
}

func dialMarionette(portFile string, limit time.Duration) (*marionette, error) {
	for deadline := time.Now().Add(limit); time.Now().Before(deadline); time.Sleep(50 * time.Millisecond) {
		port, err := os.ReadFile(portFile)
		if err != nil || len(port) == 0 {
			continue
		}
		conn, err := net.Dial("tcp", net.JoinHostPort("127.0.0.1", strings.TrimSpace(string(port))))
		if err != nil {
			continue
		}
		m := &marionette{conn: conn, in: bufio.NewReader(conn)}
		conn.SetDeadline(deadline)
		if _, err := m.frame(); err != nil { // its greeting
			conn.Close()
			return nil, err
		}
		return m, nil
	}
	return nil, fmt.Errorf("Firefox opened no port in %v", limit)
}

func (m *marionette) call(ctx context.Context, c command, p params) (json.RawMessage, error) {
	m.mu.Lock()
	defer m.mu.Unlock()
	if c.marionette == "" {
		return nil, ErrNotHere
	}
	if deadline, ok := ctx.Deadline(); ok {
		m.conn.SetDeadline(deadline)
	}
	m.id++
	sent, err := json.Marshal([]any{0, m.id, c.marionette, p})
	if err != nil {
		return nil, err
	}
	if _, err := fmt.Fprintf(m.conn, "%d:%s", len(sent), sent); err != nil {
		return nil, err
	}
	for {
		body, err := m.frame()
		if err != nil {
			return nil, fmt.Errorf("%s: %w", c.marionette, err)
		}
		var answer [4]json.RawMessage
		if err := json.Unmarshal(body, &answer); err != nil {
			return nil, err
		}
		if string(answer[1]) != strconv.Itoa(m.id) {
			continue // the answer to a call that was given up
		}
		if string(answer[2]) != "null" {
			var f fault
			if err := json.Unmarshal(answer[2], &f); err != nil {
				return nil, err
			}
			return nil, f.err()
		}
		return valueOf(answer[3]), nil
	}
}

// valueOf takes the value out of a result: most results are {"value": …}.
func valueOf(result json.RawMessage) json.RawMessage {
	var wrapped map[string]json.RawMessage
	if json.Unmarshal(result, &wrapped) == nil {
		if value, ok := wrapped["value"]; ok && len(wrapped) == 1 {
			return value
		}
	}
	return result
}

func (m *marionette) frame() ([]byte, error) {
	length, err := m.in.ReadString(':')
	if err != nil {
		return nil, err
	}
	n, err := strconv.Atoi(strings.TrimSuffix(length, ":"))
	if err != nil {
		return nil, err
	}
	body := make([]byte, n)
	_, err = io.ReadFull(m.in, body)
	return body, err
}
