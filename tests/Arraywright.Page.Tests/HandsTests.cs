using Arraywright.Page.Tests.Browser;
using Microsoft.Playwright;

namespace Arraywright.Page.Tests;

/// <summary>The main job by keyboard alone and by thumb.</summary>
public sealed class HandsTests(Chromium chromium)
{
    [Fact]
    public async Task The_main_job_can_be_done_by_keyboard_alone()
    {
        await using Visit visit = await chromium.VisitAsync();
        await TabToAsync(visit, "q-count");
        foreach (string figure in new[] { "4", "22.9", "6.72", "18.9", "6.35", "", "50", "10", "400" })
        {
            await visit.Page.Keyboard.TypeAsync(figure);
            await visit.Page.Keyboard.PressAsync("Tab");
        }

        await visit.Page.Keyboard.PressAsync("Enter");
        await visit.AnsweredAsync();
        // Down to the first rule, and open its why.
        for (int i = 0; i < 150 && !await visit.Page.EvaluateAsync<bool>("() => document.activeElement?.closest('.finding') !== null"); i++)
        {
            await visit.Page.Keyboard.PressAsync("Tab");
        }

        await visit.Page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(visit.Page.Locator(".finding details[open] .source").First).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Panels_can_be_moved_by_hand_and_what_that_breaks_is_said()
    {
        await using Visit visit = await chromium.VisitAsync();
        await visit.TakeExampleAsync("lambing-shed");
        await visit.GoAsync("try");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Take everything off" }).ClickAsync();
        // All four in one row: four times 22.9 V is more than any 50 V input bears.
        for (int i = 0; i < 4; i++)
        {
            await visit.Page.Locator(".tray").First.Locator(".tile").First.ClickAsync();
            await visit.Page.Locator(".put").First.ClickAsync();
        }

        await Assertions.Expect(visit.Page.Locator(".right .verdict.level-stop")).ToBeVisibleAsync(new() { Timeout = Visit.PatienceMs });
    }

    private static async Task TabToAsync(Visit visit, string id)
    {
        for (int i = 0; i < 40; i++)
        {
            await visit.Page.Keyboard.PressAsync("Tab");
            if (await visit.Page.EvaluateAsync<string>("() => document.activeElement?.id ?? ''") == id)
            {
                return;
            }
        }

        Assert.Fail($"#{id} cannot be reached with the Tab key");
    }
}
