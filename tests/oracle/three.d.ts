/** The few names of three that the trials use; the package itself carries no types. Angles in radians. */
declare module "three" {
  export class Vector3 {
    constructor(x?: number, y?: number, z?: number);
    x: number;
    y: number;
    z: number;
    set(x: number, y: number, z: number): this;
    applyMatrix4(matrix: Matrix4): this;
    applyQuaternion(quaternion: Quaternion): this;
    add(other: Vector3): this;
    toArray(): [number, number, number];
  }
  export class Quaternion {
    setFromAxisAngle(axis: Vector3, angle: number): this;
    multiply(other: Quaternion): this;
  }
  export class Matrix4 {
    makeTranslation(x: number, y: number, z: number): this;
    makeRotationAxis(axis: Vector3, angle: number): this;
    multiply(other: Matrix4): this;
    elements: number[];
  }
  export class BufferAttribute {
    constructor(array: Float32Array, itemSize: number);
  }
  export class BufferGeometry {
    setAttribute(name: string, attribute: BufferAttribute): this;
    setIndex(index: number[]): this;
    boundsTree: unknown;
  }
}
