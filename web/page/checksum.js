// CRC-32 with the reflected polynomial EDB88320 (ISO-HDLC; "123456789" gives cbf43926), as eight hexadecimal digits.
'use strict';
{
  const table = new Uint32Array(256).map((_, byte) => {
    let rest = byte;
    for (let bit = 0; bit < 8; ++bit) rest = rest & 1 ? (rest >>> 1) ^ 0xedb88320 : rest >>> 1;
    return rest;
  });

  globalThis.groundsheet.checksum = (text) => {
    let sum = 0xffffffff;
    for (const byte of new TextEncoder().encode(text)) sum = table[(sum ^ byte) & 255] ^ (sum >>> 8);
    return ((sum ^ 0xffffffff) >>> 0).toString(16).padStart(8, '0');
  };
}
