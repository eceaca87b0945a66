import { crc32, deflateSync } from 'node:zlib';

export type Colour = readonly [red: number, green: number, blue: number];

function part(name: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(name, 'latin1'), data]);
  const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(data.length);
  sum.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, sum]);
}

/** A PNG file without a colour profile, drawn dot by dot, each channel 0 to 255. */
export function drawnPng(width: number, height: number, at: (x: number, y: number) => Colour): Buffer {
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head.set([8, 2, 0, 0, 0], 8);
  const rows = Array.from({ length: height }, (_, y) =>
    Buffer.from([0, ...Array.from({ length: width }, (__, x) => at(x, y)).flat()]),
  );
  return Buffer.concat([
    Buffer.from('89504e470d0a1a0a', 'hex'),
    part('IHDR', head),
    part('IDAT', deflateSync(Buffer.concat(rows))),
    part('IEND', Buffer.alloc(0)),
  ]);
}
