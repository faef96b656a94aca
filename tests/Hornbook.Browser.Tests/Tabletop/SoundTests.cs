using Hornbook.Bench.Readings;
using Hornbook.Tabletop;
using Hornbook.Testing;
using Microsoft.Playwright;
using Xunit;

namespace Hornbook.Browser.Tests.Tabletop;

[Collection(nameof(ServedPage))]
[Trait("Cost", "Slow")]
public sealed class SoundTests(ServedPage served)
{
    [Fact]
    public async Task Nothing_sounds_until_it_is_asked_to_and_silence_ends_it()
    {
        IPage window = await served.WindowAsync(Screen.Wide);
        await window.AddInitScriptAsync(
            """
            window.made = [];
            const Real = window.AudioContext;
            window.AudioContext = class extends Real { constructor(options) { super(options); window.made.push(this); } };
            """);
        await window.GotoAsync(served.Address);
        await window.WaitForSelectorAsync("main[data-ready=yes]");
        BenchPage page = new(window);
        await page.DragAsync("#receiver-plan", -40, 0);
        Assert.Equal(0, await MadeAsync());

        await window.ClickAsync("#sound");
        await window.WaitForFunctionAsync("() => window.made.length === 1 && window.made[0].state === 'running'");
        await Assertions.Expect(window.Locator("#sound")).ToHaveAttributeAsync("aria-pressed", "true");

        await window.ClickAsync("#sound");
        await window.WaitForFunctionAsync("() => window.made[0].state === 'closed'");
        Assert.Equal(1, await MadeAsync());

        Task<int> MadeAsync() => window.EvaluateAsync<int>("() => window.made.length");
    }

    [Fact]
    public async Task The_pitch_is_the_one_predicted_and_follows_a_move()
    {
        BenchPage page = await served.OpenAsync();
        await page.Window.ClickAsync("#sound");
        await SoundsAsync(page, served.Scene.Read());
        await page.Window.FillAsync("#receiver-turn", "170");
        await page.Window.Keyboard.PressAsync("Enter");
        await SoundsAsync(page, served.ReadAt(await page.ReceiverAsync()));
    }

    [Fact]
    public async Task A_jump_of_the_tone_does_not_click()
    {
        BenchPage page = await served.OpenAsync();
        await page.Window.ClickAsync("#sound");
        Recording before = await Recording.TakeAsync(page.Window, seconds: 0.9);
        double steepest = await page.Window.EvaluateAsync<double>(
            """
            async () => {
              const tone = await import('./tabletop/tone.js');
              const analyser = tone.listen();
              const { context } = analyser;
              // By the clock of the sound: a busy machine may wait longer than it is told to, or sound less than it has waited.
              const sounded = async seconds => {
                const until = context.currentTime + seconds;
                while (context.currentTime < until) { await new Promise(done => setTimeout(done, 5)); }
              };
              const samples = new Float32Array(analyser.fftSize);
              let jumped;
              do {
                tone.follow(2000, 0);
                await sounded(0.15);
                jumped = context.currentTime;
                tone.follow(300, 0);
                await sounded(0.15);
                analyser.getFloatTimeDomainData(samples);
                // Looked at so late that the jump is no longer among the samples, it says nothing.
              } while (context.currentTime - jumped > 0.9 * samples.length / context.sampleRate);
              return samples.reduce((most, s, i) => i ? Math.max(most, Math.abs(s - samples[i - 1])) : most, 0);
            }
            """);
        // derived: a triangle of amplitude A and frequency f rises by 4 A f / rate from one sample to the next; a click is a
        // step of the order of A. Allowed: twice the slope of the highest tone, as the browser rounds the corners.
        double slope = 4.0 * before.Peak * 2000.0 / before.Rate;
        Assert.InRange(steepest, 0.5 * slope, 2.0 * slope);
    }

    [Fact]
    public async Task The_volume_changes_the_loudness()
    {
        BenchPage page = await served.OpenAsync();
        await page.Window.ClickAsync("#sound");
        Recording first = await Recording.TakeAsync(page.Window, seconds: 1.0);
        await page.Window.FillAsync("#volume", "60");
        await BenchPage.SoonAsync(async () =>
        {
            Recording louder = await Recording.TakeAsync(page.Window, seconds: 1.0);
            // derived: loudness goes with the square of the slider, (60/30)² = 4.
            Close.Relative(4.0, louder.Peak / first.Peak, 0.05); // the peak of a band-limited triangle depends on the sampling
            Assert.InRange(louder.Peak, 0.01, 1.0);
        });
    }

    private static async Task SoundsAsync(BenchPage page, Reading expected)
    {
        // The program tells the tone before it shows it.
        await Assertions.Expect(page.Window.Locator("#tone")).ToHaveTextAsync(Shown.Tone(expected.Heard.Tone).Number);
        Recording heard = await Recording.TakeAsync(page.Window, seconds: 1.2);
        // Asked: within 5 cents of the prediction. The bench's own jitter, averaged over 0.7 s, adds to it.
        Close.Absolute(0.0, heard.CentsFrom(expected.Heard.Tone), 5.0 + expected.Heard.JitterCents);
    }
}
