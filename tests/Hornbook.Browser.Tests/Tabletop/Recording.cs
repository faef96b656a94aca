using Microsoft.Playwright;
using Xunit;

namespace Hornbook.Browser.Tests.Tabletop;

/// <summary>What goes to the loudspeaker, taken from the page's own analyser.</summary>
public sealed record Recording(float[] Samples, double Rate)
{
    public double Peak => Samples.Max(Math.Abs);

    /// <summary>Frequency from the first to the last rising zero crossing [Hz].</summary>
    public double Pitch
    {
        get
        {
            List<double> crossings = [];
            for (int i = 1; i < Samples.Length; i++)
            {
                if (Samples[i - 1] < 0.0f && Samples[i] >= 0.0f)
                {
                    crossings.Add(i - (Samples[i] / (double)(Samples[i] - Samples[i - 1])));
                }
            }

            return crossings.Count < 2 ? double.NaN : Rate * (crossings.Count - 1) / (crossings[^1] - crossings[0]);
        }
    }

    public double CentsFrom(double frequency) => 1200.0 * Math.Log2(Pitch / frequency);

    /// <summary>Waits until there is a tone, and so that the window of samples holds only what sounds from now on, then takes it.</summary>
    /// <param name="window">With the page that sounds.</param>
    /// <param name="seconds">By the clock of the sound, which on a busy machine goes slower than ours.</param>
    public static async Task<Recording> TakeAsync(IPage window, double seconds)
    {
        double from = await SoundedAsync(window, 0.0);
        await SoundedAsync(window, from + seconds);
        float[] samples = await window.EvaluateAsync<float[]>(
            """
            async () => {
              const analyser = (await import('./tabletop/tone.js')).listen();
              const samples = new Float32Array(analyser.fftSize);
              analyser.getFloatTimeDomainData(samples);
              return [...samples];
            }
            """);
        double rate = await window.EvaluateAsync<double>("async () => (await import('./tabletop/tone.js')).listen().context.sampleRate");
        return new Recording(samples, rate);
    }

    /// <summary>Waits until the clock of the sound, which stands as long as nothing sounds, is past a time; returns what it says then [s].</summary>
    private static async Task<double> SoundedAsync(IPage window, double past)
    {
        double now = 0.0;
        await BenchPage.SoonAsync(async () =>
        {
            now = await window.EvaluateAsync<double>("async () => (await import('./tabletop/tone.js')).listen()?.context.currentTime ?? 0");
            Assert.True(now > past, $"the clock of the sound says {now} s, not yet {past} s");
        });
        return now;
    }
}
