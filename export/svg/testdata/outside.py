"""Reads an SVG with readers that are not ours and measures it with shapely.

Called with the file and the expectations; prints the worst differences and
ends with status 1 where one is too large.
"""
import json, re, sys
import xml.etree.ElementTree as ET
from shapely.geometry import LineString, Polygon

NS = '{http://www.w3.org/2000/svg}'
STEPS = 80


def points(d):
    """The points of a path of M, L, C, H, V and Z, and whether it is closed."""
    out, closed = [], False
    for cmd, args in re.findall(r'([MLCHVZ])([^MLCHVZ]*)', d):
        v = [float(x) for x in args.split()]
        if cmd in 'ML':
            out.append((v[0], v[1]))
        elif cmd == 'C':
            p0, p1, p2, p3 = out[-1], v[0:2], v[2:4], v[4:6]
            for k in range(1, STEPS + 1):
                t = k / STEPS
                u = 1 - t
                out.append(tuple(u**3 * p0[i] + 3*u*u*t * p1[i] + 3*u*t*t * p2[i] + t**3 * p3[i] for i in (0, 1)))
        elif cmd == 'Z':
            closed = True
    return out, closed


def lines(group, kind, move):
    found = []
    for g in group.iter(NS + 'g'):
        if g.get('class') == kind:
            for p in g.iter(NS + 'path'):
                pts, closed = points(p.get('d'))
                found.append(([(x + move[0], y + move[1]) for x, y in pts], closed))
    return found


def main():
    root = ET.parse(sys.argv[1]).getroot()
    worst = {'area': 0, 'length': 0, 'allowance': 0}
    faults = []

    def see(what, off, limit, says):
        worst[what] = max(worst[what], off)
        if off > limit:
            faults.append('%s: off by %.4f' % (says, off))

    for want in json.load(open(sys.argv[2])):
        group = next(g for g in root.iter(NS + 'g') if g.get('id') == want['id'])
        move = [float(x) for x in re.match(r'translate\((\S+) (\S+)\)', group.get('transform')).groups()]
        cut, closed = lines(group, 'cut', move)[0]
        sewn, _ = lines(group, 'stitch', move)[0]
        if closed == want['on_fold']:
            faults.append(want['id'] + ': the cut line is closed, and should not be, or the other way round')
        for got, outline, name in ((cut, want['cut'], 'cut'), (sewn, want['stitch'], 'stitch')):
            a, b = Polygon(got), Polygon(outline)
            if not a.is_valid:
                faults.append('%s: the %s line crosses itself' % (want['id'], name))
            see('area', abs(a.area - b.area), 1, '%s %s area of %.0f mm2' % (want['id'], name, b.area))
        ring = sewn if want['on_fold'] else sewn + sewn[:1]
        see('length', abs(LineString(ring).length - want['sewn']), 0.05, '%s stitch line' % want['id'])
        if len(lines(group, 'notch', move)) != want['notches']:
            faults.append('%s: %d notches' % (want['id'], len(lines(group, 'notch', move))))
        # The allowance, square to the stitch line, away from corners.
        edge = LineString(cut if want['on_fold'] else cut + cut[:1])
        for e in want['edges'] or []:
            line = LineString(e['stitch'])
            air = 1.6 * e['allowance'] + 1
            n = int((line.length - 2 * air) / 5)
            for k in range(n + 1 if e['allowance'] > 0 and n >= 0 else 0):
                p = line.interpolate(air + 5 * k)
                see('allowance', abs(p.distance(edge) - e['allowance']), 0.05,
                    '%s %s allowance %.2f at (%.0f, %.0f)' % (want['id'], e['name'], e['allowance'], p.x, p.y))
    print('worst: area %.3f mm2, length %.4f mm, allowance %.4f mm' % (worst['area'], worst['length'], worst['allowance']))
    print('\n'.join(faults[:20]))
    sys.exit(1 if faults else 0)


main()
