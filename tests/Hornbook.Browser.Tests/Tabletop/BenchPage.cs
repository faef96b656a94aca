using System.Globalization;
using Hornbook.Physics;
using Hornbook.Testing;
using Microsoft.Playwright;

namespace Hornbook.Browser.Tests.Tabletop;

/// <summary>The page in a window, with the hands and eyes of a visitor.</summary>
public sealed record BenchPage(IPage Window)
{
    public Task<string> TextAsync(string id) => Window.InnerTextAsync($"#{id}");

    /// <summary>A typed number as it stands, in the unit of the page.</summary>
    public async Task<double> FieldAsync(string id) =>
        double.Parse(await Window.InputValueAsync($"#{id}"), CultureInfo.InvariantCulture);

    /// <summary>Where the typed numbers say that the receiver is.</summary>
    public async Task<Pose> ReceiverAsync()
    {
        const double Degree = Math.PI / 180.0;
        return new Pose(
            new Vector(await Cm("along"), await Cm("left"), await Cm("height")),
            Degree * await FieldAsync("receiver-turn"),
            Degree * await FieldAsync("receiver-tilt"),
            Degree * await FieldAsync("receiver-roll"));

        async Task<double> Cm(string key) => 1e-2 * await FieldAsync($"receiver-{key}");
    }

    /// <summary>Waits until the bench has been looked over and read: until then lines come and go that move what stands below them.</summary>
    public async Task RestAsync()
    {
        await Assertions.Expect(Window.Locator("#findings[aria-busy=false] :is(li, p:not(.quiet))")).Not.ToHaveCountAsync(0);
        await Assertions.Expect(Window.Locator(".reading")).ToHaveAttributeAsync("aria-busy", "false");
    }

    /// <summary>The middle of something on the screen [CSS px].</summary>
    public async Task<(float X, float Y)> MiddleAsync(string selector)
    {
        LocatorBoundingBoxResult box = await Window.Locator(selector).BoundingBoxAsync()
            ?? throw new InvalidOperationException($"{selector} is not on the screen");
        return (box.X + (box.Width / 2), box.Y + (box.Height / 2));
    }

    /// <summary>CSS pixels for a millimetre of the bench, the same in both views.</summary>
    public Task<float> ScaleAsync() => Window.EvaluateAsync<float>("() => document.querySelector('.sheet').getScreenCTM().a");

    /// <summary>Takes hold of something and moves the pointer by millimetres of the bench (y down the screen), in steps.</summary>
    public async Task DragAsync(string selector, double rightMm, double downMm, int steps = 8)
    {
        (float x, float y) = await MiddleAsync(selector);
        float scale = await ScaleAsync();
        await Window.Mouse.MoveAsync(x, y);
        await Window.Mouse.DownAsync();
        await Window.Mouse.MoveAsync(x + (float)(rightMm * scale), y + (float)(downMm * scale), new MouseMoveOptions { Steps = steps });
        await Window.Mouse.UpAsync();
    }

    /// <summary>Puts a finger on the screen, moves it in steps, and lifts it [CSS px].</summary>
    public async Task SwipeAsync((float X, float Y) from, (float X, float Y) to, int steps = 8)
    {
        ICDPSession fingers = await Window.Context.NewCDPSessionAsync(Window);
        await TouchAsync("touchStart", from);
        for (int step = 1; step <= steps; step++)
        {
            float share = (float)step / steps;
            await TouchAsync("touchMove", (from.X + (share * (to.X - from.X)), from.Y + (share * (to.Y - from.Y))));
        }

        await TouchAsync("touchEnd");

        Task TouchAsync(string type, params (float X, float Y)[] points) => fingers.SendAsync("Input.dispatchTouchEvent", new Dictionary<string, object>
        {
            ["type"] = type,
            ["touchPoints"] = points.Select(point => new Dictionary<string, object> { ["x"] = point.X, ["y"] = point.Y }).ToArray(),
        });
    }

    /// <summary>Presses Tab until something has the keyboard.</summary>
    public async Task TabToAsync(string selector)
    {
        // There are some 60 stops a round; a page that has no way there would not get there in two.
        for (int i = 0; i < 120; i++)
        {
            if (await Window.EvaluateAsync<bool>("wanted => document.activeElement.matches(wanted)", selector))
            {
                return;
            }

            await Window.Keyboard.PressAsync("Tab");
        }

        Xunit.Assert.Fail($"the keyboard does not reach {selector}");
    }

    /// <summary>Checks again and again until the check holds; after a minute its own complaint goes through.</summary>
    public static async Task SoonAsync(Func<Task> check)
    {
        DateTime patience = DateTime.UtcNow.AddSeconds(60.0);
        while (true)
        {
            try
            {
                await check();
                return;
            }
            catch (Exception complaint) when (complaint is NotCloseException or Xunit.Sdk.XunitException && DateTime.UtcNow < patience)
            {
                await Task.Delay(30);
            }
        }
    }

    /// <summary>Waits until a typed number has become this.</summary>
    public Task FieldBecomesAsync(string id, double expected, double tolerance) =>
        SoonAsync(async () => Close.Absolute(expected, await FieldAsync(id), tolerance));
}
