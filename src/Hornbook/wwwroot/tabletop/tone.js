// The tone of the bench. Nothing is made, and nothing sounds, before start() is called from a button.
// Every change glides (exponential approach), so that neither a step of the pitch nor of the loudness clicks.

const pitchGlide = 0.012; // time constant [s]: shorter than a hand can move, longer than a click
const loudnessGlide = 0.03;
const loudest = 0.35; // of full scale
const wanderBand = 8; // how fast the noise makes the pitch wander [Hz]

let parts = null;

/** What sounds now, for measurement: an analyser in the path to the loudspeaker, or null when silent. */
export function listen() { return parts?.analyser ?? null; }

export async function start(hertz, jitterCents, volume) {
  if (parts) { return; }
  const context = new AudioContext({ latencyHint: 'interactive' });
  const oscillator = new OscillatorNode(context, { type: 'triangle', frequency: hertz });
  const wander = new AudioBufferSourceNode(context, { buffer: slowNoise(context, 7), loop: true });
  const depth = new GainNode(context, { gain: jitterCents });
  const loudness = new GainNode(context, { gain: 0 });
  const analyser = new AnalyserNode(context, { fftSize: 32768 });
  wander.connect(depth).connect(oscillator.detune);
  oscillator.connect(loudness).connect(analyser).connect(context.destination);
  parts = { context, oscillator, wander, depth, loudness, analyser };
  oscillator.start();
  wander.start();
  setVolume(volume);
  await context.resume();
}

export function follow(hertz, jitterCents) {
  if (!parts) { return; }
  const now = parts.context.currentTime;
  parts.oscillator.frequency.setTargetAtTime(hertz, now, pitchGlide);
  parts.depth.gain.setTargetAtTime(jitterCents, now, pitchGlide);
}

/** From 0 to 1; loudness rises with the square, which to the ear is nearly even. */
export function setVolume(volume) {
  parts?.loudness.gain.setTargetAtTime(loudest * volume * volume, parts.context.currentTime, loudnessGlide);
}

export async function stop() {
  if (!parts) { return; }
  const { context } = parts;
  setVolume(0);
  parts = null;
  await new Promise(done => setTimeout(done, 6000 * loudnessGlide));
  await context.close();
}

/** Random values of rms 1 that change slowly: the pitch wanders as it does from the noise of detector and amplifier. */
function slowNoise(context, seconds) {
  const rate = context.sampleRate;
  const buffer = new AudioBuffer({ length: Math.round(seconds * rate), sampleRate: rate });
  const samples = buffer.getChannelData(0);
  const keep = Math.exp(-2 * Math.PI * wanderBand / rate);
  let level = 0;
  for (let i = 0; i < samples.length; i++) {
    // Sum of three uniform numbers: near enough to Gaussian for the ear.
    level = keep * level + (1 - keep) * (Math.random() + Math.random() + Math.random() - 1.5);
    samples[i] = level;
  }
  const mean = samples.reduce((sum, s) => sum + s, 0) / samples.length;
  const power = samples.reduce((sum, s) => sum + (s - mean) ** 2, 0) / samples.length;
  for (let i = 0; i < samples.length; i++) { samples[i] = (samples[i] - mean) / Math.sqrt(power); }
  return buffer;
}
