package settings

import (
	"slices"
	"strconv"
	"strings"

	"chalkfold/ui/keys"
)

// Template is a file with every setting and every key, commented out, as they
// are when nothing is said.
func Template(t keys.Set) string {
	var b strings.Builder
	b.WriteString("# The settings of Chalkfold. Take the # off a line and change it.\n")
	for _, r := range table {
		b.WriteString("\n# " + r.says + "\n# Can be: " + r.works + ".\n# " + r.name + " = " + r.usual + "\n")
	}
	b.WriteString("\n# Other keys for an action. Two actions of one place cannot have the same.\n# [keys]\n")
	for _, w := range keys.Wheres() {
		rows := t.In(w)
		if len(rows) == 0 {
			continue
		}
		b.WriteString("\n# " + w.Title() + "\n")
		for _, a := range rows {
			b.WriteString("# " + string(a.ID) + " = " + list(append(slices.Clone(a.Keys), a.Untyped...)) + " # " + a.Title + "\n")
		}
	}
	return b.String()
}

func list(all []string) string {
	quoted := make([]string, len(all))
	for i, k := range all {
		quoted[i] = strconv.Quote(k)
	}
	if len(quoted) == 1 {
		return quoted[0]
	}
	return "[" + strings.Join(quoted, ", ") + "]"
}
