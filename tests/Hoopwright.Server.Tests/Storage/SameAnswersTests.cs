using System.Globalization;
using System.Text.Json;
using CsCheck;
using Hoopwright.Sharing;

namespace Hoopwright.Server.Tests.Storage;

/// <summary>Random days of several devices, lived on SQLite and on PostgreSQL: every answer is the same.</summary>
public sealed class SameAnswersTests(PostgresServer postgres)
{
    private const int Devices = 3;

    // Few ids and few values, so that the same entry comes twice and one id comes with other content.
    private static readonly Gen<Act> Acts = Gen.OneOf<Act>(
        Gen.Select(Gen.Int[0, Devices - 1], Gen.Select(Gen.Int[0, 12], Gen.Int[0, 2]).Array[1, 5], (device, entries) => new Push(device, entries)),
        Gen.Select(Gen.Int[0, Devices - 1], device => new Pull(device)),
        Gen.Select(Gen.Int[0, Devices - 1], Gen.Int[20, 24], (device, span) => new Change(device, span)),
        Gen.Select(Gen.Int[0, Devices - 1], device => new Revoke(device)));

    [Fact]
    public void Both_databases_give_the_same_answers() => Acts.Array[1, 40].Sample(
        acts =>
        {
            Assert.Equal(Live(StoredIn.Sqlite, acts), Live(StoredIn.Postgres, acts));
            return true;
        },
        iter: 12, threads: 1);

    // The cases are tried one after the other by a library that does not wait for tasks.
    private string Live(StoredIn kind, Act[] acts) => Task.Run(() => LiveAsync(kind, acts)).GetAwaiter().GetResult();

    private async Task<string> LiveAsync(StoredIn kind, Act[] acts)
    {
        await using Host host = await Host.StartAsync(kind, postgres);
        SharedPlanClient keeper = await host.ShareAsync();
        NewLinkAnswer[] links = new NewLinkAnswer[Devices];
        long[] cursors = new long[Devices];
        for (int device = 0; device < Devices; device++) links[device] = await keeper.MakeLinkAsync(new NewLink(LinkKind.Edit, $"device {device}"));
        StringWriter said = new(CultureInfo.InvariantCulture);
        foreach (Act act in acts)
        {
            host.Clock.Now = host.Clock.Now.AddSeconds(7);
            SharedPlanClient device = host.With(links[act.Device].Token);
            try
            {
                said.WriteLine(act switch
                {
                    Push push => Json(await device.PushAsync(Entries.Push([.. push.Entries.Select(each => Entries.Measured(each.Item1, $"{each.Item2} ft"))]))),
                    Change change => Json(await device.PushAsync(new DocumentPush($$"""{ "hoopwright": "1.0", "frame": { "span": "{{change.Span}} ft" } }"""))),
                    Revoke => await RevokeAsync(keeper, links[act.Device].Id),
                    Pull => Json(await PullAsync(device, act.Device)),
                    _ => throw new InvalidOperationException(),
                });
            }
            catch (SharingException refused)
            {
                said.WriteLine(refused.Problem.Code);
            }
        }
        said.WriteLine(Json(await keeper.GetAsync() with { Epoch = "" }));
        foreach (AuditRow row in (await keeper.AuditAsync()).Rows) said.WriteLine(Json(row with { LinkId = "" }));
        return said.ToString();

        async Task<PlanState> PullAsync(SharedPlanClient device, int number)
        {
            PlanState state = await device.GetAsync(cursors[number]);
            cursors[number] = state.Cursor;
            return state with { Epoch = "" };
        }
    }

    private static async Task<string> RevokeAsync(SharedPlanClient keeper, string link)
    {
        await keeper.RevokeLinkAsync(link);
        return "revoked";
    }

    private static string Json<T>(T value) => JsonSerializer.Serialize(value, SharingJson.Default.Options);

    private abstract record Act(int Device);

    private sealed record Push(int Device, (int, int)[] Entries) : Act(Device);

    private sealed record Pull(int Device) : Act(Device);

    private sealed record Change(int Device, int Span) : Act(Device);

    private sealed record Revoke(int Device) : Act(Device);
}
