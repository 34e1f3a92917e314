package early

import (
	"reflect"
	"testing"

	"github.com/charmbracelet/lipgloss"
	"github.com/stretchr/testify/require"
)

type here struct{}

// The trick rests on the order of import paths.
func TestSortsBeforeTheFramework(t *testing.T) {
	require.Less(t, reflect.TypeFor[here]().PkgPath(), "github.com/charmbracelet/bubbletea")
}

func TestTheAnswerIsSet(t *testing.T) {
	require.True(t, lipgloss.HasDarkBackground())
}
