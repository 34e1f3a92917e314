package files

import (
	"errors"
	"fmt"
	"hash/fnv"
	"os"
	"path/filepath"
	"regexp"
	"runtime"
	"strconv"
	"sync"
	"syscall"
	"time"
)

// A piece beside its place is named after the machine and the process that
// writes it: .NAME.MACHINE-PROCESS.CHANCE.part
const partEnd = ".part"

var partName = sync.OnceValue(func() *regexp.Regexp { return regexp.MustCompile(`^\..*\.([0-9a-f]{8})-([0-9]+)\.[0-9a-f]{8}\.part$`) })

// left is how old a piece of another machine must be before it counts as left:
// nobody here can see whether that process runs.
const left = 24 * time.Hour

// ownMark tells the pieces of this process from all others.
func ownMark() string { return machine() + "-" + strconv.Itoa(os.Getpid()) }

// machine is this machine's name, in eight letters that any disk takes.
func machine() string {
	name, _ := os.Hostname() // without one all machines look alike
	h := fnv.New32a()
	_, _ = h.Write([]byte(name))
	return fmt.Sprintf("%08x", h.Sum32())
}

// Sweep takes away pieces in a folder that were left by a process that was
// ended while it wrote. A piece of a process that runs is never touched, nor
// anything of another name; what cannot be taken away stays, untold.
func Sweep(folder string) {
	list, err := os.ReadDir(folder)
	if err != nil {
		return
	}
	for _, f := range list {
		m := partName().FindStringSubmatch(f.Name())
		if m == nil || !f.Type().IsRegular() {
			continue
		}
		if pid, err := strconv.Atoi(m[2]); err != nil || m[1] == machine() && Alive(pid) {
			continue
		}
		if info, err := f.Info(); err != nil || m[1] != machine() && time.Since(info.ModTime()) < left {
			continue
		}
		_ = os.Remove(filepath.Join(folder, f.Name())) // the next sweep tries again
	}
}

// Alive says whether a process of this program runs under that number. Where
// the system tells, a process of another program that got the number does not
// count.
func Alive(pid int) bool {
	p, err := os.FindProcess(pid)
	if err != nil {
		return false
	}
	if runtime.GOOS == "windows" {
		return true
	}
	if err := p.Signal(syscall.Signal(0)); err != nil && !errors.Is(err, os.ErrPermission) && !errors.Is(err, syscall.EPERM) {
		return false
	}
	own, err := os.ReadFile("/proc/self/comm")
	theirs, also := os.ReadFile("/proc/" + strconv.Itoa(pid) + "/comm")
	return err != nil || also != nil || string(own) == string(theirs)
}
