"""Reads the cut line of every piece out of an SVG, a DXF and a PDF with readers
that are not ours, and holds areas and extents to the JSON of `pieces`.

agree.py pieces.json FILE.svg FILE.dxf TRACE.xml, TRACE.xml being what
`mutool trace` makes of the PDF.
"""
import json
import re
import sys
import xml.etree.ElementTree as ET

import ezdxf
from shapely.geometry import Polygon

POINT = 25.4 / 72
SVG = '{http://www.w3.org/2000/svg}'


def bezier(a, b, c, d, n=64):
    for k in range(1, n + 1):
        t = k / n
        u = 1 - t
        w = (u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t)
        yield tuple(w[0] * a[i] + w[1] * b[i] + w[2] * c[i] + w[3] * d[i] for i in (0, 1))


def from_svg(name):
    out = {}
    for g in ET.parse(name).getroot().iter(SVG + 'g'):
        for cut in g.findall(SVG + 'g'):
            if cut.get('class') != 'cut' or not g.get('id'):
                continue
            points = []
            for d in [p.get('d') for p in cut.findall(SVG + 'path')][:1]:
                for op, text in re.findall(r'([MLCZ])([^MLCZ]*)', d):
                    v = [float(x) for x in re.findall(r'-?[0-9.]+', text)]
                    pairs = list(zip(v[0::2], v[1::2]))
                    if op == 'C':
                        for i in range(0, len(pairs), 3):
                            points.extend(bezier(points[-1], *pairs[i:i + 3]))
                    else:
                        points.extend(pairs)
            out[g.get('id')] = points
    return out


def from_dxf(name):
    out = {}
    for b in ezdxf.readfile(name).blocks:
        for e in b:
            if e.dxftype() == 'POLYLINE' and e.dxf.layer == '1':
                out[b.name[:-2].lower()] = [(v.dxf.location.x, v.dxf.location.y) for v in e.vertices]
    return out


def from_pdf(name):
    """The heaviest strokes, in the order in which they are drawn."""
    strokes = []
    for e in ET.parse(name).getroot().iter('stroke_path'):
        m = [float(x) for x in e.get('transform').split()]
        place = lambda x, y: ((m[0] * x + m[2] * y + m[4]) * POINT, (m[1] * x + m[3] * y + m[5]) * POINT)
        points = []
        for s in e:
            v = {k: float(x) for k, x in s.attrib.items()}
            if s.tag in ('moveto', 'lineto'):
                points.append(place(v['x'], v['y']))
            elif s.tag == 'curveto':
                points.extend(bezier(points[-1], place(v['x1'], v['y1']), place(v['x2'], v['y2']), place(v['x3'], v['y3'])))
        strokes.append((float(e.get('linewidth')) * abs(m[0]), points))
    heaviest = max(w for w, _ in strokes)
    return [p for w, p in strokes if w > 0.99 * heaviest]


def main():
    pieces = json.load(open(sys.argv[1]))['pieces']
    svg, dxf, pdf = from_svg(sys.argv[2]), from_dxf(sys.argv[3]), from_pdf(sys.argv[4])
    faults, worst = [], 0
    if not len(pieces) == len(svg) == len(dxf) == len(pdf):
        faults.append('pieces: %d, svg %d, dxf %d, pdf %d' % (len(pieces), len(svg), len(dxf), len(pdf)))
    for i, p in enumerate(pieces):
        want = Polygon(p['cut_line'])
        for kind, points in (('svg', svg.get(p['id'])), ('dxf', dxf.get(p['id'])), ('pdf', pdf[i])):
            got = Polygon(points)
            x0, y0, x1, y1 = got.bounds
            a0, b0, a1, b1 = want.bounds
            for what, g, w in (('area', got.area, want.area), ('width', x1 - x0, a1 - a0), ('height', y1 - y0, b1 - b0)):
                off = abs(g - w) / w
                worst = max(worst, off)
                if off > 0.0005:
                    faults.append('%s: %s of the %s is %.3f, want %.3f' % (p['id'], what, kind, g, w))
        if abs(want.area - p['area']) > 1e-3 * want.area:
            faults.append('%s: area %.3f, of its outline %.3f' % (p['id'], p['area'], want.area))
    print('%d pieces, worst %.5f %%' % (len(pieces), 100 * worst))
    print('\n'.join(faults[:20]))
    sys.exit(1 if faults or not pieces else 0)


main()
