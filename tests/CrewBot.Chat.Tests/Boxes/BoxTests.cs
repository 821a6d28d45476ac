namespace CrewBot.Chat.Tests.Boxes;

public sealed class BoxTests : IAsyncDisposable
{
    private readonly CrewRoom _room = new();

    [Fact]
    public async Task Add_EveryKindOfThing_StandsInTheBoxUnderItsKind()
    {
        var added = await _room.SayAsync(
            "box add item:\"braid 6lb, fluorocarbon leader 8lb, steel 18lb, 1/8oz jigging spoon, 1/8oz tungsten small jig, hook 6, auger 8in, flip-over shelter for 3, propane heater, rescue kit\"");
        var sled = await _room.SayAsync("box add item:sled");

        Assert.Null(added.Problem);
        Assert.Equal(11, Assert.Single(sled.Figures).Value);
        Assert.Equal(
            [
                "Lines: braid 6 lb.",
                "Leaders: fluorocarbon 8 lb leader, steel wire 18 lb leader.",
                "Lures: 1/8 oz lead jigging spoon, 1/8 oz tungsten small jig.",
                "Hooks: hook 6.",
                "Augers: auger 8in.",
                "Shelters: flip-over shelter for 3.",
                "Heaters: propane heater.",
                "Sleds and rescue kits: sled, rescue kit.",
            ],
            (await _room.SayAsync("box show")).Lines);
    }

    [Fact]
    public async Task Show_Crew_NamesEachOwner()
    {
        await _room.SayAsync("box add item:\"heater, heater\"", member: "Ana");
        await _room.SayAsync("box add item:\"heater\"", member: "Bo");

        Assert.Equal(["Heaters: Ana 2 × heater; Bo heater."], (await _room.SayAsync("box show whose:crew", member: "Cy")).Lines);
    }

    [Theory]
    [InlineData("braid 6 lb")]
    [InlineData("Braid 6lb")]
    [InlineData("6lb braid")]
    [InlineData("braid")]
    public async Task Remove_ByItsNameOrAPartThatNoOtherHas_TakesOneOut(string said)
    {
        await _room.SayAsync("box add item:\"braid 6lb, hook 6, braid 6lb\"");

        var removed = await _room.SayAsync($"box remove item:\"{said}\"");

        Assert.Equal("Out of Ana's box: braid 6 lb", removed.Headline);
        Assert.Equal(["1 more of it left."], removed.Lines);
        Assert.Equal(["Lines: braid 6 lb.", "Hooks: hook 6."], (await _room.SayAsync("box show")).Lines);
    }

    [Fact]
    public async Task Remove_WhatAnotherOwns_IsRefused()
    {
        await _room.SayAsync("box add item:heater", member: "Bo");

        Assert.Equal(
            "Your box is empty. /box add item:\"braid 6lb\" puts something in.", (await _room.SayAsync("box remove item:heater")).Problem);
        Assert.Equal(["Heaters: heater."], (await _room.SayAsync("box show", member: "Bo")).Lines);
    }

    [Theory]
    [InlineData("box add item:canoe", "can't tell what 'canoe' is")]
    [InlineData("box add 6lb", "can't tell what '6lb' is")]
    [InlineData("box add item:braid", "'braid' has neither test nor diameter")]
    [InlineData("box add item:\"hook 99\"", "'hook 99' names no hook size")]
    [InlineData("box add item:\"auger 8ft\"", "outside")]
    [InlineData("box add item:\"shelter for 0\"", "can't tell how many 'shelter for 0' seats")]
    [InlineData("box add item:\"1/8oz doughnut\"", "'doughnut' is no lure I know")]
    [InlineData("box remove item:\"hook\"", "'hook' could be hook 6 or hook 4: give the whole name.")]
    [InlineData("box remove item:\"hook 66\"", "'hook 66' is not in your box. Nearest: hook 6, hook 4")]
    public async Task Box_WrongInput_IsRefusedInALineAndChangesNothing(string line, string part)
    {
        await _room.SayAsync("box add item:\"hook 6, hook 4\"");

        var reply = await _room.SayAsync(line);

        Assert.Contains(part, reply.Problem, StringComparison.Ordinal);
        Assert.Equal(["Hooks: hook 6, hook 4."], (await _room.SayAsync("box show")).Lines);
    }

    [Fact]
    public async Task Add_SameRequestAgain_AddsOnce()
    {
        await _room.SayAsync("box add item:heater", id: "again");
        await _room.SayAsync("box add item:heater", id: "again");

        Assert.Equal(["Heaters: heater."], (await _room.SayAsync("box show")).Lines);
    }

    [Fact]
    public async Task Suggest_WhatIsInOnesOwnBox_IsOfferedWhereItFits()
    {
        await _room.SayAsync("box add item:\"braid 6lb, braid 6lb, fluorocarbon leader 8lb, 1/8oz jigging spoon, heater\"");
        await _room.SayAsync("box add item:\"braid 20lb\"", member: "Bo");

        Assert.Equal(["braid 6 lb", "fluorocarbon 8 lb leader", "1/8 oz lead jigging spoon", "heater"], await _room.SuggestAsync("box remove", "item", ""));
        Assert.Equal(["heater"], await _room.SuggestAsync("box remove", "item", "HEAT"));
        Assert.Equal(["braid 6 lb", "fluorocarbon 8 lb"], (await _room.SuggestAsync("rig check", "mainline", "")).Take(2));
        Assert.Equal(["1/8 oz lead jigging spoon"], await _room.SuggestAsync("rig check", "lure", "spoon"));
        Assert.Equal(["1/8 oz lead jigging spoon"], await _room.SuggestAsync("catch log", "lure", ""));
        Assert.Equal(["none", "braid 6 lb"], (await _room.SuggestAsync("rig drop", "line", "")).Take(2));
        Assert.Empty(await _room.SuggestAsync("box remove", "item", "", crew: null));
    }

    // What is offered must be read again.
    [Fact]
    public async Task Suggest_ForARig_IsUnderstood()
    {
        await _room.SayAsync("box add item:\"braid 6lb, fluorocarbon leader 8lb, 1/8oz jigging spoon, 1/16oz tungsten small jig\"");
        var lines = (await _room.SuggestAsync("rig check", "mainline", "")).Take(2).ToList();
        foreach (var lure in await _room.SuggestAsync("rig check", "lure", ""))
        {
            Assert.Null((await _room.SayAsync($"rig check mainline:\"{lines[0]}\" leader:\"{lines[1]}\" lure:\"{lure}\"")).Problem);
        }
    }

    public ValueTask DisposeAsync() => _room.DisposeAsync();
}
