package browser

import (
	"bufio"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"time"
)

// startWebKit starts WebKitGTK's small browser under its driver, on a display
// of its own. Its automation profile is new each time and kept nowhere.
func startWebKit(o Options) (*Session, error) {
	s := &Session{}
	if o.Profile != "" {
		return nil, ErrNotHere
	}
	browser, err := miniBrowser()
	if err != nil {
		return nil, err
	}
	screen, display, err := startDisplay()
	if err != nil {
		return nil, err
	}
	s.ends = append(s.ends, screen.end)
	port, err := freePort()
	if err != nil {
		s.Close()
		return nil, err
	}
	driver, err := launch(nil, webKitEnv(display, o), "WebKitWebDriver", "--port="+strconv.Itoa(port))
	if err != nil {
		s.Close()
		return nil, err
	}
	s.ends = append(s.ends, driver.end)
	wire, err := openHTTP("http://127.0.0.1:"+strconv.Itoa(port), params{
		"browserName":              "MiniBrowser",
		"webkitgtk:browserOptions": params{"binary": browser, "args": []string{"--automation"}},
	})
	if err != nil {
		s.Close()
		return nil, err
	}
	s.wire = wire
	s.ends = append(s.ends, func() { s.do(command{"", "DELETE", ""}, nil, nil) })
	s.console = func() ([]string, error) { return heard(s) }
	return s, nil
}

// webKitEnv: the accessibility bus that GTK asks for is not there.
// WEBKIT_DISABLE_DMABUF_RENDERER stays unset: with it, pictures of the window never
// come in 2.50, and neither do they without compositing, though a load of the page
// then takes 0.93 s of a processor in the place of 1.23 s.
func webKitEnv(display string, o Options) []string {
	theme := "Adwaita"
	if o.Dark {
		theme += ":dark"
	}
	env := []string{"DISPLAY=" + display, "WAYLAND_DISPLAY=", "GDK_BACKEND=x11", "NO_AT_BRIDGE=1", "GTK_THEME=" + theme}
	if !o.Pictures {
		env = append(env, "WEBKIT_DISABLE_COMPOSITING_MODE=1")
	}
	if o.Sparing {
		env = append(env, "JSC_useOMGJIT=0")
	}
	return env
}

// miniBrowser finds the browser that comes with the library.
func miniBrowser() (string, error) {
	found, _ := filepath.Glob("/usr/lib/*/webkit2gtk-4.*/MiniBrowser") // the pattern is well formed
	if len(found) == 0 {
		return "", fmt.Errorf("MiniBrowser %w", ErrMissing)
	}
	return found[len(found)-1], nil
}

// startDisplay starts an X server without a screen; it says which display it is.
func startDisplay() (*process, string, error) {
	read, write, err := os.Pipe()
	if err != nil {
		return nil, "", err
	}
	defer read.Close()
	cmd := exec.Command("Xvfb", "-displayfd", "3", "-screen", "0", "1600x1400x24", "-nolisten", "tcp")
	cmd.ExtraFiles = []*os.File{write}
	screen, err := begin(cmd)
	write.Close()
	if err != nil {
		return nil, "", err
	}
	read.SetReadDeadline(time.Now().Add(20 * time.Second))
	number, err := bufio.NewReader(read).ReadString('\n')
	if err != nil {
		screen.end()
		return nil, "", fmt.Errorf("Xvfb named no display: %w", err)
	}
	return screen, ":" + strings.TrimSpace(number), nil
}

// ConsoleHook is a script that a page under test loads before its own: this
// engine's driver does not pass on what is written to the console. It misses
// what the engine says before it runs.
const ConsoleHook = `(() => {
	const heard = window.consoleHeard = []
	const hear = (kind, ...words) => heard.push(kind + ': ' + words.map(String).join(' '))
	for (const kind of ['log', 'info', 'warn', 'error', 'debug', 'assert', 'trace']) {
		const write = console[kind]
		console[kind] = (...words) => { hear(kind, ...words); write.apply(console, words) }
	}
	addEventListener('error', (e) => hear('error', e.message || 'could not load ' + (e.target.src || e.target.href)), true)
	addEventListener('unhandledrejection', (e) => hear('rejection', e.reason))
	addEventListener('securitypolicyviolation', (e) => hear('policy', e.violatedDirective, e.blockedURI), true)
})()`

// heard takes what the hook has heard so far.
func heard(s *Session) (messages []string, err error) {
	return messages, s.ExecuteTo(&messages, "return (window.consoleHeard || ['no ConsoleHook in this page']).splice(0)")
}
