import type { Solid, SolidLayer } from "@oncethrough/engine/drawing/solids";
import {
  AmbientLight,
  Box3,
  BoxGeometry,
  BufferGeometry,
  Color,
  DirectionalLight,
  DoubleSide,
  EdgesGeometry,
  Group,
  LineBasicMaterial,
  LineSegments,
  Mesh,
  MeshLambertMaterial,
  PerspectiveCamera,
  Plane,
  Raycaster,
  Scene,
  Spherical,
  Vector2,
  Vector3,
  WebGLRenderer,
} from "three";
import { OrbitControls } from "three/examples/jsm/controls/OrbitControls.js";
import { edgesOf, facesOf, joined } from "./solid-geometry.ts";
import { type Tone, toneOf } from "./solid-tone.ts";

/** What is shown of the machine. */
export interface SolidLook {
  readonly hidden: ReadonlySet<SolidLayer>;
  /** Share of the width, from the right wall, that is cut away; 0 cuts nothing. */
  readonly cut: number;
  readonly picked: string | undefined;
}

/** Where the eye stands. */
export type StandPoint = "right" | "left" | "above" | "corner";

const directions: Readonly<Record<StandPoint, readonly [number, number, number]>> = {
  right: [0, 0.12, 1],
  left: [0, 0.12, -1],
  above: [0, 1, 0.001],
  corner: [-0.62, 0.5, 1],
};

const signs = [-1, 1] as const;
const cornerSigns = signs.flatMap((x) => signs.flatMap((y) => signs.map((z) => new Vector3(x, y, z))));

/** The clear cabinet, m. */
export interface Cabinet {
  readonly length: number;
  readonly width: number;
  readonly height: number;
}

interface Piece {
  readonly section: string | undefined;
  readonly layer: SolidLayer;
  readonly tone: Tone;
  readonly faces: Mesh<BufferGeometry, MeshLambertMaterial>;
  readonly edges: LineSegments<BufferGeometry, LineBasicMaterial>;
}

/** A share of one colour over another, as inks mix to the eye and not as lights do. */
function mixed(under: Color, over: Color, share: number): Color {
  const [one, other] = [under.clone().convertLinearToSRGB(), over.clone().convertLinearToSRGB()];
  return one.lerp(other, share).convertSRGBToLinear();
}

/**
 * The scene of one unit on a canvas. It draws a frame when something has changed and none while all is still; whatever it
 * took of the graphics processor it gives back in `dispose`.
 */
export class SolidStage {
  readonly #renderer: WebGLRenderer;
  readonly #scene = new Scene();
  readonly #camera = new PerspectiveCamera(28, 1, 0.1, 400);
  readonly #controls: OrbitControls;
  readonly #machine = new Group();
  readonly #knife = new Plane(new Vector3(0, 0, -1), 0);
  readonly #box = new Box3();
  /** The outline of the cabinet, seen while its walls are hidden. */
  readonly #cabinet = new LineSegments(new BufferGeometry(), new LineBasicMaterial());
  #pieces: readonly Piece[] = [];
  #look: SolidLook = { hidden: new Set(), cut: 0, picked: undefined };
  #width = 0;
  #frame = 0;
  /** Frames drawn so far; a test can see that stillness costs none. */
  frames = 0;

  /** @throws Error when the browser has no WebGL */
  constructor(canvas: HTMLCanvasElement) {
    this.#renderer = new WebGLRenderer({ canvas, antialias: true, alpha: true });
    this.#renderer.localClippingEnabled = true;
    this.#renderer.setPixelRatio(Math.min(2, window.devicePixelRatio));
    this.#scene.add(new AmbientLight(0xffffff, 2.45), this.#machine, this.#cabinet);
    for (const [x, y, z, strength] of [
      [-3, 6, 5, 0.95],
      [4, 2, -5, 0.4],
    ] as const) {
      const light = new DirectionalLight(0xffffff, strength);
      light.position.set(x, y, z);
      this.#scene.add(light);
    }
    this.#controls = new OrbitControls(this.#camera, canvas);
    this.#controls.addEventListener("change", this.#ask);
  }

  /** Puts a machine on the stage in its clear cabinet (m); the eye stays where it is unless there was none before. */
  show(solids: readonly Solid[], { length, width, height }: Cabinet): void {
    const isFirst = this.#pieces.length === 0;
    this.#clear();
    this.#width = width;
    const groups = new Map<string, Solid[]>();
    for (const solid of solids) {
      const { role, share } = toneOf(solid);
      const key = [solid.section, solid.layer, role, share].join("\n");
      groups.set(key, [...(groups.get(key) ?? []), solid]);
    }
    this.#pieces = [...groups.values()].map((group) => this.#pieceOf(group));
    this.#cabinet.geometry.dispose();
    const room = new BoxGeometry(length, height, width).translate(length / 2, height / 2, -width / 2);
    this.#cabinet.geometry = new EdgesGeometry(room);
    room.dispose();
    this.#box.setFromObject(this.#machine);
    this.restyle();
    if (isFirst) this.stand("corner");
  }

  /** Shows and hides, cuts, and marks the section in hand. */
  look(look: SolidLook): void {
    this.#look = look;
    this.restyle();
  }

  /** Takes the colours of the page as they are now. */
  restyle(): void {
    const roles = getComputedStyle(document.documentElement);
    const colour = (role: string) => new Color(roles.getPropertyValue(`--${role}`).trim() || "#888888");
    const paper = colour("paper");
    const ink = colour("ink-fine");
    const { hidden, cut, picked } = this.#look;
    this.#knife.constant = -cut * this.#width;
    this.#cabinet.visible = hidden.has("casing");
    this.#cabinet.material.color.copy(colour("quiet-line"));
    const knives = cut > 0 ? [this.#knife] : [];
    for (const { section, layer, tone, faces, edges } of this.#pieces) {
      const isPicked = section !== undefined && section === picked;
      const isRoom = layer === "service space";
      faces.visible = !hidden.has(layer) && !isRoom;
      edges.visible = !hidden.has(layer);
      const fill = mixed(paper, colour(tone.role), tone.share);
      faces.material.color.copy(isPicked ? mixed(fill, colour("choice"), 0.28) : fill);
      edges.material.color.copy(isPicked || isRoom ? colour("choice") : ink);
      faces.material.clippingPlanes = knives;
      edges.material.clippingPlanes = knives;
    }
    this.#ask();
  }

  /** Fits the drawing to the canvas's place on the page. */
  resize(width: number, height: number): void {
    this.#renderer.setSize(width, height, false);
    this.#camera.aspect = width / height;
    this.#camera.updateProjectionMatrix();
    this.#ask();
  }

  /** Looks at the whole machine from a side. */
  stand(point: StandPoint): void {
    const centre = this.#box.getCenter(new Vector3());
    const size = this.#box.getSize(new Vector3());
    const direction = new Vector3(...directions[point]).normalize();
    const aside = new Vector3(0, 1, 0).cross(direction).normalize();
    const up = direction.clone().cross(aside);
    const high = Math.tan((this.#camera.fov * Math.PI) / 360);
    const wide = high * this.#camera.aspect;
    let reach = 0;
    for (const corner of cornerSigns) {
      const from = size.clone().multiplyScalar(0.5).multiply(corner);
      const needed = Math.max(Math.abs(from.dot(aside)) / wide, Math.abs(from.dot(up)) / high);
      reach = Math.max(reach, 1.04 * needed + from.dot(direction));
    }
    this.#controls.target.copy(centre);
    this.#camera.position.copy(centre).addScaledVector(direction, reach);
    this.#controls.update();
    this.#ask();
  }

  /** Turns the eye about the machine (radians), or goes nearer: `nearer` over 1. */
  turn(aside: number, up: number, nearer: number): void {
    const { target } = this.#controls;
    const offset = this.#camera.position.clone().sub(target);
    const place = new Spherical().setFromVector3(offset);
    place.theta += aside;
    place.phi = Math.min(Math.PI - 0.02, Math.max(0.02, place.phi - up));
    place.radius /= nearer;
    this.#camera.position.copy(target).add(offset.setFromSpherical(place));
    this.#controls.update();
    this.#ask();
  }

  /** Name of the section under a point of the canvas, −1…1 across and up; undefined beside the machine. */
  sectionAt(across: number, up: number): string | undefined {
    // The eye may have moved since the last frame.
    this.#camera.updateMatrixWorld();
    const ray = new Raycaster();
    ray.setFromCamera(new Vector2(across, up), this.#camera);
    const meshes = this.#pieces.filter(({ faces }) => faces.visible).map(({ faces }) => faces);
    const isCut = this.#look.cut > 0;
    const hit = ray
      .intersectObjects(meshes, false)
      .find(({ point }) => !isCut || this.#knife.distanceToPoint(point) >= 0);
    return this.#pieces.find(({ faces }) => faces === hit?.object)?.section;
  }

  /** Gives everything back. */
  dispose(): void {
    cancelAnimationFrame(this.#frame);
    this.#controls.removeEventListener("change", this.#ask);
    this.#controls.dispose();
    this.#clear();
    this.#cabinet.geometry.dispose();
    this.#cabinet.material.dispose();
    this.#renderer.dispose();
    this.#renderer.forceContextLoss();
  }

  #pieceOf(group: readonly Solid[]): Piece {
    const first = group[0]!;
    const shapes = group.map(facesOf);
    const edges = new LineSegments(joined(shapes.map(edgesOf)), new LineBasicMaterial());
    // Faces stand back a little, so that their edges are drawn clear of them.
    const paint = new MeshLambertMaterial({
      side: DoubleSide,
      polygonOffset: true,
      polygonOffsetFactor: 1,
      polygonOffsetUnits: 1,
    });
    const faces = new Mesh(joined(shapes), paint);
    this.#machine.add(faces, edges);
    return { section: first.section, layer: first.layer, tone: toneOf(first), faces, edges };
  }

  #clear(): void {
    for (const { faces, edges } of this.#pieces) {
      for (const each of [faces, edges]) {
        each.geometry.dispose();
        each.material.dispose();
      }
    }
    this.#machine.clear();
    this.#pieces = [];
  }

  /** One frame soon, however often it is asked for. */
  readonly #ask = (): void => {
    if (this.#frame !== 0) return;
    this.#frame = requestAnimationFrame(() => {
      this.#frame = 0;
      this.frames += 1;
      this.#renderer.render(this.#scene, this.#camera);
    });
  };
}
