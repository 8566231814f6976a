using System.Text.Json.Nodes;
using CsCheck;
using Hoopwright.Web.State;

namespace Hoopwright.Web.Tests;

public sealed class EntrySlipTests
{
    private const string Address = "https://tunnel.example/take#";

    [Fact]
    public void What_is_packed_comes_out_as_it_was()
    {
        JsonArray entries = [Entry(1, "26' 0-1/2\""), Entry(2, "süß – \u00bd")];
        EntrySlip slip = EntrySlip.Unpack(new EntrySlip("North field", entries).Pack())!;
        Assert.Equal("North field", slip.Plan);
        Assert.Equal(entries.ToJsonString(), slip.Entries.ToJsonString());
    }

    [Fact]
    public void Every_entry_that_is_short_enough_is_on_one_slip_and_no_slip_is_longer_than_a_camera_reads()
    {
        JsonObject plan = new() { ["name"] = "North field", ["siteBook"] = new JsonArray([.. Enumerable.Range(0, 60).Select(at => (JsonNode)Entry(at, $"{at} ft")), Entry(98, new string('x', 30)), Long(99)]) };
        (string Address, int Entries)[] slips = [.. EntrySlip.Of(plan, Address, most: 40)];
        Assert.All(slips, slip => Assert.InRange(slip.Address.Length, Address.Length, 900));
        string[] ids = [.. slips.SelectMany(slip => EntrySlip.Unpack(slip.Address[Address.Length..])!.Entries).Select(entry => entry!["id"]!.GetValue<string>())];
        Assert.Equal(61, ids.Length);
        Assert.Equal(ids.OrderDescending(StringComparer.Ordinal), ids);
        Assert.Equal(ids.Length, slips.Sum(slip => slip.Entries));

        // What does not shrink: letters without an order.
        static JsonObject Long(int at) => Entry(at, Convert.ToBase64String(System.Security.Cryptography.SHA512.HashData([1])) + string.Concat(Enumerable.Range(0, 20).Select(n => Convert.ToBase64String(System.Security.Cryptography.SHA512.HashData([(byte)n])))));
    }

    [Fact]
    public void Letters_that_are_no_slip_are_refused() => Gen.String[0, 300].Sample(letters => EntrySlip.Unpack(letters) is null, iter: 2000);

    [Fact]
    public void A_slip_that_was_changed_on_its_way_is_refused_or_still_holds_entries_only()
    {
        string whole = new EntrySlip("North field", [Entry(1, "26 ft"), Entry(2, "12 ft")]).Pack();
        Gen.Select(Gen.Int[0, whole.Length - 1], Gen.Char.AlphaNumeric).Sample(change =>
        {
            string changed = whole[..change.Item1] + change.Item2 + whole[(change.Item1 + 1)..];
            return EntrySlip.Unpack(changed) is not { } slip || slip.Entries.All(entry => entry!["id"] is JsonValue);
        }, iter: 2000);
        Assert.Null(EntrySlip.Unpack(whole[..^5]));
    }

    [Fact]
    public void What_unpacks_to_far_more_than_entries_is_refused()
    {
        string bomb = new EntrySlip(new string('a', 10_000_000), [Entry(1, "26 ft")]).Pack();
        Assert.InRange(bomb.Length, 1, 30_000);
        Assert.Null(EntrySlip.Unpack(bomb));
    }

    private static JsonObject Entry(int at, string value) => new() { ["id"] = $"20260401T{at:000000}000Z-abcdefgh", ["kind"] = "measurement", ["of"] = "frame.span", ["value"] = value, ["by"] = "Wren" };
}
