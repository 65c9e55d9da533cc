package browser

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"net"
	"os"
	"os/exec"
	"strings"
	"sync"
	"syscall"
	"time"
)

// process is a started program. It leads a process group, so that the children
// it leaves can be ended with it.
type process struct {
	cmd  *exec.Cmd
	done chan struct{}
}

// launch starts a program that writes to out; nil is nowhere.
func launch(out io.Writer, env []string, name string, args ...string) (*process, error) {
	cmd := exec.Command(name, args...)
	cmd.Env = append(os.Environ(), env...)
	if out != nil {
		cmd.Stdout, cmd.Stderr = out, out
	}
	return begin(cmd)
}

func begin(cmd *exec.Cmd) (*process, error) {
	if errors.Is(cmd.Err, exec.ErrNotFound) {
		return nil, fmt.Errorf("%s %w", cmd.Path, ErrMissing)
	}
	cmd.WaitDelay = time.Second // a child may hold the pipe of its output
	cmd.SysProcAttr = &syscall.SysProcAttr{Setpgid: true}
	if err := cmd.Start(); err != nil {
		return nil, err
	}
	p := &process{cmd, make(chan struct{})}
	go func() {
		cmd.Wait()
		close(p.done)
	}()
	return p, nil
}

// wait waits until the process has ended by itself, for at most the limit.
func (p *process) wait(limit time.Duration) {
	select {
	case <-p.done:
	case <-time.After(limit):
	}
}

// end ends the process and its group: asked first, then made to.
func (p *process) end() {
	group := -p.cmd.Process.Pid
	syscall.Kill(group, syscall.SIGTERM)
	p.wait(3 * time.Second)
	syscall.Kill(group, syscall.SIGKILL)
	<-p.done
}

// profile is the folder that a browser is to keep, or a new one, and how to
// remove that: its last processes may still write in it a moment after its end.
func profile(kept string) (dir string, remove func(), err error) {
	if kept != "" {
		return kept, func() {}, nil
	}
	dir, err = os.MkdirTemp("", "saltbite-profile-")
	return dir, func() {
		for range 50 {
			if os.RemoveAll(dir) == nil {
				return
			}
			time.Sleep(100 * time.Millisecond)
		}
	}, err
}

// freePort is a port of this machine that no program listens on.
func freePort() (int, error) {
	listener, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		return 0, err
	}
	defer listener.Close()
	address, ok := listener.Addr().(*net.TCPAddr)
	if !ok {
		return 0, errors.New("no port")
	}
	return address.Port, nil
}

// output keeps what a program prints.
type output struct {
	mu   sync.Mutex
	text bytes.Buffer
}

func (o *output) Write(b []byte) (int, error) {
	o.mu.Lock()
	defer o.mu.Unlock()
	return o.text.Write(b)
}

// take gives the lines so far that start with a word, and forgets all.
func (o *output) take(word string) []string {
	o.mu.Lock()
	defer o.mu.Unlock()
	var lines []string
	for line := range strings.Lines(o.text.String()) {
		if strings.HasPrefix(line, word) {
			lines = append(lines, strings.TrimSpace(line))
		}
	}
	o.text.Reset()
	return lines
}
