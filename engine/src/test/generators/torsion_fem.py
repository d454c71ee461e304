# SPDX-License-Identifier: Apache-2.0
"""Torsion of whole tap sections by a general-purpose finite-element library: the independent check of landfall.torsion.

Mesh: gmsh (second order, curved edges). Solver: scikit-fem, quadratic triangles, Poisson's equation -lap(phi) = 2, phi = 0
on the outline. Stiffness 2*integral(phi); peak stress the greatest |grad phi| on the outline. The whole section is meshed,
not one repeat, and the outline is built here from the card's figures, not by the program. Run:

    pip install gmsh scikit-fem meshio
    python3 torsion_fem.py > ../resources/reference/torsion/finite-elements.csv
"""
import math
import tempfile

import gmsh
import numpy as np
import skfem
from skfem.helpers import dot, grad

# name, basic major, pitch (60 degrees), flutes, core diameter, flute radius, rake or None, land angle; mm and degrees
CARDS = [
    ("M8 plug of the cards", 8.0, 1.25, 3, 3.5, 2.1, 10.0, math.degrees(2 * 2.6 / 8.0)),
    ("M8, wider land", 8.0, 1.25, 3, 3.5, 2.0, 5.0, 50.0),
    ("M10, four flutes", 10.0, 1.5, 4, 5.0, 1.8, 8.0, 32.0),
    ("M12, two flutes of one arc", 12.0, 1.75, 2, 5.4, 3.2, None, None),
]


def cut_circle(p, q, radius):
    """The place where the straight way from p (inside) to q (outside) crosses the circle about the axis."""
    d = q - p
    a, b, c = d @ d, p @ d, p @ p - radius * radius
    return p + d * (-b + math.sqrt(b * b - a * c)) / a


def arc_crossing(c, rho, radius, side):
    """Where the arc about c crosses the circle about the axis; side -1 towards the face, 1 towards the heel."""
    dist = np.linalg.norm(c)
    alpha = math.acos((radius**2 + dist**2 - rho**2) / (2 * radius * dist))
    t = math.atan2(c[1], c[0]) + side * alpha
    return radius * np.array([math.cos(t), math.sin(t)])


def flute(major, pitch, n, core, rho, rake, land):
    """Corners of one flute from face to heel and the arc's centre: [points before the arc], centre, [points after]."""
    R, clip = major / 2, (major - 0.75 * math.sqrt(3) / 2 * pitch) / 2
    if rake is None:
        c = np.array([core / 2 + rho, 0.0])
        return clip, [arc_crossing(c, rho, clip, -1)], c, [arc_crossing(c, rho, clip, 1)]
    g = math.radians(rake)
    u = np.array([math.cos(g), math.sin(g)])      # outwards along the face
    v = np.array([-math.sin(g), math.cos(g)])     # square to it, into the flute
    behind = R * math.sin(g)
    along = math.sqrt((core / 2 + rho) ** 2 - (rho - behind) ** 2)
    c = along * u + (rho - behind) * v
    face_end = c - rho * v
    heel_at = 2 * math.pi / n - math.radians(land)
    heel = R * np.array([math.cos(heel_at), math.sin(heel_at)])
    w = heel - c
    t = math.atan2(w[1], w[0]) + math.acos(rho / np.linalg.norm(w))
    tangent = c + rho * np.array([math.cos(t), math.sin(t)])
    edge = np.array([R, 0.0])
    first = [cut_circle(face_end, edge, clip), face_end] if np.linalg.norm(face_end) < clip else [arc_crossing(c, rho, clip, -1)]
    last = [tangent, cut_circle(tangent, heel, clip)] if np.linalg.norm(tangent) < clip else [arc_crossing(c, rho, clip, 1)]
    return clip, first, c, last


def solve(card, size):
    name, major, pitch, n, core, rho, rake, land = card
    clip, first, c, last = flute(major, pitch, n, core, rho, rake, land)
    gmsh.initialize()
    gmsh.option.setNumber("General.Terminal", 0)
    occ = gmsh.model.occ
    axis = occ.addPoint(0, 0, 0)
    curves, begins = [], []
    for k in range(n):
        a = 2 * math.pi * k / n
        turn = np.array([[math.cos(a), -math.sin(a)], [math.sin(a), math.cos(a)]])
        pts = [occ.addPoint(*(turn @ p), 0) for p in first]
        back = [occ.addPoint(*(turn @ p), 0) for p in last]
        centre = occ.addPoint(*(turn @ c), 0)
        # two arcs by way of the floor, so that none is over half a turn
        floor = occ.addPoint(*(turn @ (c - rho * c / np.linalg.norm(c))), 0)
        begins.append((pts, centre, floor, back))
    for k, (pts, centre, floor, back) in enumerate(begins):
        for p, q in zip(pts, pts[1:]):
            curves.append(occ.addLine(p, q))
        curves.append(occ.addCircleArc(pts[-1], centre, floor))
        curves.append(occ.addCircleArc(floor, centre, back[0]))
        for p, q in zip(back, back[1:]):
            curves.append(occ.addLine(p, q))
        curves.append(occ.addCircleArc(back[-1], axis, begins[(k + 1) % n][0][0]))
    occ.addPlaneSurface([occ.addCurveLoop(curves)])
    occ.synchronize()
    gmsh.option.setNumber("Mesh.MeshSizeMax", size * clip)
    gmsh.option.setNumber("Mesh.MeshSizeMin", size * clip)
    gmsh.option.setNumber("Mesh.ElementOrder", 2)
    gmsh.option.setNumber("Mesh.SaveAll", 0)
    gmsh.model.addPhysicalGroup(2, [s[1] for s in gmsh.model.getEntities(2)])
    gmsh.model.mesh.generate(2)
    with tempfile.NamedTemporaryFile(suffix=".msh") as f:
        gmsh.write(f.name)
        mesh = skfem.MeshTri2.load(f.name)
    gmsh.finalize()
    basis = skfem.Basis(mesh, skfem.ElementTriP2(), intorder=6)
    A = skfem.BilinearForm(lambda u, v, _: dot(grad(u), grad(v))).assemble(basis)
    b = skfem.LinearForm(lambda v, _: 2.0 * v).assemble(basis)
    x = skfem.solve(*skfem.condense(A, b, D=basis.get_dofs()))
    J = float(b @ x)
    rim = skfem.FacetBasis(mesh, skfem.ElementTriP2(), intorder=6)
    slope = np.asarray(rim.interpolate(x).grad)
    tau = float(np.sqrt((slope**2).sum(axis=0)).max())
    return J / (math.pi * clip**4 / 2), tau / clip, mesh.t.shape[1]


if __name__ == "__main__":
    print("# source: derived, finite elements on the whole section: engine/src/test/generators/torsion_fem.py, gmsh %s, scikit-fem %s"
          % (gmsh.__version__, skfem.__version__))
    print("# tolerance: 0.1 %, what is asked of the solver; the last column tells how far the run moved when its mesh was halved")
    print("# columns: name;major in mm;pitch in mm;flutes;core in mm;flute radius in mm;rake in deg;land in deg;J over J0;peak stress;triangles;moved in %")
    for card in CARDS:
        J1, t1, _ = solve(card, 0.03)
        J2, t2, cells = solve(card, 0.015)
        moved = 100 * max(abs(J2 / J1 - 1), abs(t2 / t1 - 1))
        print(";".join(str("" if v is None else v) for v in card) + ";%.6f;%.5f;%d;%.3f" % (J2, t2, cells, moved))
