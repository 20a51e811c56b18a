import {
  BufferAttribute,
  BufferGeometry,
  Color,
  DirectionalLight,
  EdgesGeometry,
  Group,
  HemisphereLight,
  LineBasicMaterial,
  LineSegments,
  Mesh,
  MeshLambertMaterial,
  PerspectiveCamera,
  Scene,
  WebGLRenderer,
} from "three";
import type { Surface } from "./core/api-types.js";

/** Field of the camera, degrees: narrow, so that sides stay nearly parallel. */
const FIELD = 22;
/** Edges between faces that turn by more are drawn, degrees: not those of a round rim. */
const EDGE = 28;

interface Loaded {
  geometry: BufferGeometry;
  edges: EdgesGeometry;
}

/** Draws solids: one graphics context for all of them, copied onto the canvas of whoever asks. A bundle of its own. */
export class Solids {
  private readonly scene = new Scene();
  private readonly tilted = new Group();
  private readonly turned = new Group();
  private readonly camera = new PerspectiveCamera(FIELD, 1, 1, 10_000);
  private readonly loaded = new Map<string, Loaded>();

  private constructor(
    private readonly renderer: WebGLRenderer,
    private readonly canvas: HTMLCanvasElement,
    private readonly plastic: MeshLambertMaterial,
    private readonly pencil: LineBasicMaterial,
  ) {
    renderer.setClearColor("#000000", 0);
    const sun = new DirectionalLight("#ffffff", 2.2);
    sun.position.set(-2, 3, 4);
    this.scene.add(new HemisphereLight("#ffffff", "#8a7a60", 1.5), sun, this.tilted);
    this.tilted.add(this.turned);
  }

  /** Null where this browser has no WebGL. */
  static open(plastic: string, pencil: string): Solids | null {
    const canvas = document.createElement("canvas");
    const context = canvas.getContext("webgl2", { alpha: true, antialias: true });
    if (!context) return null;
    const renderer = new WebGLRenderer({ canvas, context, alpha: true, antialias: true });
    const surface = { color: new Color(plastic), polygonOffset: true, polygonOffsetFactor: 1, polygonOffsetUnits: 1 };
    return new Solids(renderer, canvas, new MeshLambertMaterial(surface), new LineBasicMaterial({ color: new Color(pencil) }));
  }

  load(surfaces: Surface[]): void {
    this.forget();
    for (const surface of surfaces) {
      const corners = new Float32Array(3 * surface.triangles.length);
      surface.triangles.forEach((vertex, i) => {
        for (let k = 0; k < 3; k++) corners[3 * i + k] = surface.vertices[3 * vertex + k] ?? 0;
      });
      const geometry = new BufferGeometry().setAttribute("position", new BufferAttribute(corners, 3)).center();
      geometry.computeVertexNormals();
      geometry.computeBoundingSphere();
      this.loaded.set(surface.name, { geometry, edges: new EdgesGeometry(geometry, EDGE) });
    }
  }

  /**
   * Draws one on a canvas as large as it lies on the page.
   *
   * @param turn about its upright, rad
   * @param tilt toward the viewer, rad
   */
  draw(name: string, on: HTMLCanvasElement, turn: number, tilt: number): void {
    const solid = this.loaded.get(name);
    const paper = on.getContext("2d");
    if (!solid || !paper) return;
    const dots = Math.min(2, window.devicePixelRatio || 1);
    const [width, height] = [Math.round(on.clientWidth * dots), Math.round(on.clientHeight * dots)];
    if (width === 0 || height === 0) return;
    if (on.width !== width || on.height !== height) [on.width, on.height] = [width, height];
    this.turned.clear();
    this.turned.add(new Mesh(solid.geometry, this.plastic), new LineSegments(solid.edges, this.pencil));
    this.turned.rotation.z = turn;
    // As it stands on the printer's bed: its z is up.
    this.tilted.rotation.x = tilt - Math.PI / 2;
    const half = (FIELD / 2) * (Math.PI / 180);
    const radius = solid.geometry.boundingSphere?.radius ?? 1;
    this.camera.position.set(0, 0, (1.06 * radius) / Math.sin(half) / Math.min(1, width / height));
    this.camera.aspect = width / height;
    this.camera.updateProjectionMatrix();
    this.renderer.setSize(width, height, false);
    this.renderer.render(this.scene, this.camera);
    paper.clearRect(0, 0, width, height);
    paper.drawImage(this.canvas, 0, 0);
  }

  /** Gives the graphics context back. */
  dispose(): void {
    this.forget();
    this.plastic.dispose();
    this.pencil.dispose();
    this.renderer.dispose();
    this.renderer.forceContextLoss();
  }

  private forget(): void {
    this.turned.clear();
    for (const { geometry, edges } of this.loaded.values()) {
      geometry.dispose();
      edges.dispose();
    }
    this.loaded.clear();
  }
}
