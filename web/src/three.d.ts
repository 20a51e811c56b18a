/** What the page uses of three; the library brings no types of its own. */
declare module "three" {
  export class Object3D {
    readonly rotation: { x: number; y: number; z: number };
    readonly position: { set(x: number, y: number, z: number): void };
    add(...objects: Object3D[]): this;
    clear(): this;
  }
  export class Group extends Object3D {}
  export class Scene extends Object3D {}
  export class Color {
    constructor(css: string);
  }
  export class BufferAttribute {
    constructor(numbers: Float32Array, each: number);
  }
  export class BufferGeometry {
    readonly boundingSphere: { radius: number } | null;
    setAttribute(name: string, values: BufferAttribute): this;
    center(): this;
    computeVertexNormals(): void;
    computeBoundingSphere(): void;
    dispose(): void;
  }
  export class EdgesGeometry extends BufferGeometry {
    constructor(of: BufferGeometry, leastDegrees: number);
  }
  interface Material {
    dispose(): void;
  }
  export class MeshLambertMaterial implements Material {
    constructor(look: {
      color: Color;
      polygonOffset: boolean;
      polygonOffsetFactor: number;
      polygonOffsetUnits: number;
    });
    dispose(): void;
  }
  export class LineBasicMaterial implements Material {
    constructor(look: { color: Color });
    dispose(): void;
  }
  export class Mesh extends Object3D {
    constructor(geometry: BufferGeometry, material: Material);
  }
  export class LineSegments extends Object3D {
    constructor(geometry: BufferGeometry, material: Material);
  }
  export class HemisphereLight extends Object3D {
    constructor(sky: string, ground: string, intensity: number);
  }
  export class DirectionalLight extends Object3D {
    constructor(color: string, intensity: number);
  }
  export class PerspectiveCamera extends Object3D {
    constructor(fieldDegrees: number, aspect: number, near: number, far: number);
    aspect: number;
    updateProjectionMatrix(): void;
  }
  export class WebGLRenderer {
    constructor(options: { canvas: HTMLCanvasElement; context: WebGL2RenderingContext; alpha: boolean; antialias: boolean });
    setSize(width: number, height: number, style: boolean): void;
    setClearColor(color: string, alpha: number): void;
    render(scene: Scene, camera: PerspectiveCamera): void;
    dispose(): void;
    forceContextLoss(): void;
  }
}
