import type { Solid } from "@oncethrough/engine/drawing/solids";
import {
  BoxGeometry,
  BufferGeometry,
  CylinderGeometry,
  EdgesGeometry,
  ExtrudeGeometry,
  Float32BufferAttribute,
  Matrix4,
  Shape,
} from "three";

/*
 * From the engine's millimetres (x along the airflow, y from the right wall to the left, z up) to the scene's metres:
 * x along the airflow, y up, z towards who stands at the right wall.
 */

/** The solid's faces in the scene. */
export function facesOf(solid: Solid): BufferGeometry {
  if (solid.shape === "box") return boxFaces(solid.place, solid.size);
  if (solid.shape === "cylinder") return cylinderFaces(solid);
  return prismFaces(solid);
}

/** Its edges, as pairs of points; of round pieces those of the ends. */
export function edgesOf(faces: BufferGeometry): BufferGeometry {
  return new EdgesGeometry(faces, 32);
}

/** Geometries of one kind joined: positions, and normals where they have them. */
export function joined(geometries: readonly BufferGeometry[]): BufferGeometry {
  const positions: number[] = [];
  const normals: number[] = [];
  for (const geometry of geometries) {
    const flat = geometry.index === null ? geometry : geometry.toNonIndexed();
    append(positions, flat.getAttribute("position").array);
    const normal = flat.getAttribute("normal");
    if (normal !== undefined) append(normals, normal.array);
    if (flat !== geometry) flat.dispose();
    geometry.dispose();
  }
  const all = new BufferGeometry();
  all.setAttribute("position", new Float32BufferAttribute(positions, 3));
  if (normals.length > 0) all.setAttribute("normal", new Float32BufferAttribute(normals, 3));
  return all;
}

function append(values: number[], more: ArrayLike<number>): void {
  for (let index = 0; index < more.length; index += 1) values.push(more[index]!);
}

interface Triple {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

function boxFaces(place: Triple, size: Triple): BufferGeometry {
  const box = new BoxGeometry(size.x / 1000, size.z / 1000, size.y / 1000);
  return box.translate((place.x + size.x / 2) / 1000, (place.z + size.z / 2) / 1000, -(place.y + size.y / 2) / 1000);
}

function cylinderFaces({ axis, centre, radius, length }: Extract<Solid, { shape: "cylinder" }>): BufferGeometry {
  const sides = Math.max(10, Math.min(40, Math.round(radius / 8)));
  const faces = new CylinderGeometry(radius / 1000, radius / 1000, length / 1000, sides);
  if (axis === "x") faces.rotateZ(Math.PI / 2);
  else if (axis === "y") faces.rotateX(Math.PI / 2);
  return faces.translate(centre.x / 1000, centre.z / 1000, -centre.y / 1000);
}

/** Turns the plane of an outline and the direction of its drawing out into the scene; columns are across, up, along. */
const planes = {
  x: new Matrix4().set(0, 0, 1, 0, 0, 1, 0, 0, -1, 0, 0, 0, 0, 0, 0, 1),
  y: new Matrix4().set(1, 0, 0, 0, 0, 1, 0, 0, 0, 0, -1, 0, 0, 0, 0, 1),
  z: new Matrix4().set(1, 0, 0, 0, 0, 0, 1, 0, 0, -1, 0, 0, 0, 0, 0, 1),
} as const;

function prismFaces({ axis, outline, from, to }: Extract<Solid, { shape: "prism" }>): BufferGeometry {
  const shape = new Shape();
  for (let index = 0; index + 1 < outline.length; index += 2) {
    const [across, up] = [outline[index]! / 1000, outline[index + 1]! / 1000];
    if (index === 0) shape.moveTo(across, up);
    else shape.lineTo(across, up);
  }
  shape.closePath();
  const faces = new ExtrudeGeometry(shape, { depth: (to - from) / 1000, bevelEnabled: false });
  faces.translate(0, 0, from / 1000);
  return faces.applyMatrix4(planes[axis]);
}
