package card

import (
	"fmt"
	"io"
	"strings"

	"chalkfold/pattern"
)

// WriteMarkdown writes the card as Markdown: the same words in tables.
func WriteMarkdown(w io.Writer, s *pattern.Sheet, o Options) error {
	if err := ready(s, o.Unit); err != nil {
		return err
	}
	c := o.card(s)
	g := gridOf(o.Unit)
	var b strings.Builder
	fmt.Fprintf(&b, "# Chalk card\n\n%s\n\n", plain(title(c)))
	bullets(&b, c.Says)
	for _, p := range c.Pieces {
		markdownPiece(&b, p, g)
	}
	if len(c.Traced) > 0 {
		b.WriteString("## Facings, traced by width\n\n")
		for _, f := range c.Traced {
			fmt.Fprintf(&b, "**%s**\n\n", plain(pieceTitle(f.Number, f.Of, f.Title, f.Cut)))
			bullets(&b, f.Says)
		}
	}
	fmt.Fprintf(&b, "*%s*\n", plain(c.Caution))
	_, err := io.WriteString(w, b.String())
	return err
}

func markdownPiece(b *strings.Builder, p Piece, g grid) {
	fmt.Fprintf(b, "## %s\n\n", plain(pieceTitle(p.Number, p.Of, p.Title, p.Cut)))
	bullets(b, append(append([]string(nil), p.Set...), "Levels: "+levelList(p.Levels, g)))
	b.WriteString("| joined | mark | cut: down | cut: out | stitch: down | stitch: out | |\n")
	b.WriteString("|---|---|---|---|---|---|---|\n")
	for _, r := range p.Rows {
		b.WriteString("|")
		for _, c := range cells(r, g) {
			b.WriteString(" " + plain(c) + " |")
		}
		b.WriteString(" " + plain(strings.Join(r.Notes, "; ")) + " |\n")
	}
	b.WriteString("\n")
	if len(p.Darts) > 0 {
		b.WriteString("### Dart\n\n")
		bullets(b, p.Darts)
	}
	if len(p.Notches) > 0 {
		b.WriteString("### Clips into the edge (cutting line)\n\n")
		bullets(b, p.Notches)
	}
	fmt.Fprintf(b, "%s\n\n", plain(p.Grain))
	if len(p.Proofs) > 0 {
		b.WriteString("### Proof, by tape along the stitching line, before the shears\n\n")
		for _, f := range p.Proofs {
			fmt.Fprintf(b, "- [ ] %s\n", plain(proof(f, g)))
		}
		b.WriteString("\n")
	}
}

func bullets(b *strings.Builder, list []string) {
	for _, s := range list {
		fmt.Fprintf(b, "- %s\n", plain(s))
	}
	if len(list) > 0 {
		b.WriteString("\n")
	}
}

// plain keeps what stands in a name from being read as Markdown.
var plainer = strings.NewReplacer(`\`, `\\`, "|", `\|`, "*", `\*`, "_", `\_`, "`", "\\`", "<", `\<`, "[", `\[`, "]", `\]`, "#", `\#`)

func plain(s string) string { return plainer.Replace(s) }
