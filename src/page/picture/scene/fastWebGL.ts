// Whether a graphics card draws WebGL.

/** Drivers that draw on the processor. */
const ON_PROCESSOR = /swiftshader|llvmpipe|softpipe|software|basic render/i;

/** Whether WebGL is drawn by a graphics card. Where the processor has to do it, a plain canvas is several times faster. */
export function hasFastWebGL(canvas: HTMLCanvasElement = document.createElement('canvas')): boolean {
  const context = canvas.getContext('webgl', { failIfMajorPerformanceCaveat: true });
  if (context === null) return false;
  const named = context.getExtension('WEBGL_debug_renderer_info');
  const renderer: unknown = context.getParameter(named === null ? context.RENDERER : named.UNMASKED_RENDERER_WEBGL);
  context.getExtension('WEBGL_lose_context')?.loseContext();
  return !ON_PROCESSOR.test(String(renderer));
}
