using System.Collections.Immutable;
using System.Net.Http.Headers;
using System.Net.Http.Json;
using System.Net.ServerSentEvents;
using System.Runtime.CompilerServices;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;

namespace Hoopwright.Sharing;

/// <summary>
/// Talks to a server that keeps a shared plan, with one link. Every call throws <see cref="SharingException"/> where the server refuses
/// and <see cref="HttpRequestException"/> where it cannot be reached.
/// </summary>
/// <param name="http">Its base address is the server's.</param>
/// <param name="token">The secret part of the link, or the keeper key. It goes in a header, never in an address.</param>
public sealed class SharedPlanClient(HttpClient http, string token)
{
    private const string Plan = "api/v1/plan";

    /// <summary>Asks a server to keep a plan; no link is needed for that.</summary>
    public static Task<NewShareAnswer> ShareAsync(HttpClient http, NewShare share, CancellationToken stop = default) =>
        new SharedPlanClient(http, "").SendAsync(HttpMethod.Post, "api/v1/shares", Body(share, SharingJson.Default.NewShare), SharingJson.Default.NewShareAnswer, stop);

    /// <summary>The plan, unless the device has its version, and the entries after a cursor.</summary>
    /// <param name="after">Cursor of the answer before; 0 at first.</param>
    /// <param name="version">Version that the device has; 0 for none.</param>
    /// <param name="stop">Ends the call.</param>
    public Task<PlanState> GetAsync(long after = 0, long version = 0, CancellationToken stop = default) =>
        SendAsync(HttpMethod.Get, FormattableString.Invariant($"{Plan}?after={after}&version={version}"), null, SharingJson.Default.PlanState, stop);

    /// <summary>Adds entries to the site book. Sending the same ones again does no harm.</summary>
    public Task<EntryPushAnswer> PushAsync(EntryPush push, CancellationToken stop = default) =>
        SendAsync(HttpMethod.Post, Plan + "/entries", Body(push, SharingJson.Default.EntryPush), SharingJson.Default.EntryPushAnswer, stop);

    /// <summary>Changes the plan; the answer is what it is now, with what others changed.</summary>
    public Task<DocumentPushAnswer> PushAsync(DocumentPush push, CancellationToken stop = default) =>
        SendAsync(HttpMethod.Post, Plan + "/document", Body(push, SharingJson.Default.DocumentPush), SharingJson.Default.DocumentPushAnswer, stop);

    /// <summary>
    /// Tells at once, and then whenever plan or site book change, how far they are. Ends when the link is revoked, the plan deleted or the
    /// server stopped; where nothing is heard for <see cref="SignsOfLife.Silence"/>, it is cancelled.
    /// </summary>
    /// <param name="clock">Measures the silence.</param>
    /// <param name="stop">Ends it.</param>
    public async IAsyncEnumerable<PlanChange> ChangesAsync(TimeProvider clock, [EnumeratorCancellation] CancellationToken stop = default)
    {
        using CancellationTokenSource silence = new(SignsOfLife.Silence, clock), either = CancellationTokenSource.CreateLinkedTokenSource(silence.Token, stop);
        using HttpRequestMessage request = Request(HttpMethod.Get, Plan + "/events", null);
        using HttpResponseMessage answer = await http.SendAsync(request, HttpCompletionOption.ResponseHeadersRead, either.Token);
        await ThrowUnlessDone(answer, either.Token);
        await using Stream stream = await answer.Content.ReadAsStreamAsync(either.Token);
        await foreach (SseItem<string> item in SseParser.Create(stream).EnumerateAsync(either.Token))
        {
            silence.CancelAfter(SignsOfLife.Silence);
            if (item.EventType == "changed" && ChangeIn(item.Data) is { } change) yield return change;
        }
    }

    /// <summary>The links of the plan; with the keeper key.</summary>
    public Task<ImmutableArray<SharedLink>> LinksAsync(CancellationToken stop = default) =>
        SendAsync(HttpMethod.Get, Plan + "/links", null, SharingJson.Default.ImmutableArraySharedLink, stop);

    /// <summary>Makes a link; with the keeper key.</summary>
    public Task<NewLinkAnswer> MakeLinkAsync(NewLink link, CancellationToken stop = default) =>
        SendAsync(HttpMethod.Post, Plan + "/links", Body(link, SharingJson.Default.NewLink), SharingJson.Default.NewLinkAnswer, stop);

    /// <summary>Revokes a link at once and for good; with the keeper key.</summary>
    public Task RevokeLinkAsync(string id, CancellationToken stop = default) => SendAsync(HttpMethod.Delete, $"{Plan}/links/{Uri.EscapeDataString(id)}", stop);

    /// <summary>What was changed, oldest first; with the keeper key.</summary>
    /// <param name="after">Number of the last row of the answer before; 0 at first.</param>
    /// <param name="stop">Ends the call.</param>
    public Task<AuditPage> AuditAsync(long after = 0, CancellationToken stop = default) =>
        SendAsync(HttpMethod.Get, FormattableString.Invariant($"{Plan}/audit?after={after}"), null, SharingJson.Default.AuditPage, stop);

    /// <summary>Everything that the server keeps of this plan, as a zip file; with the keeper key.</summary>
    public async Task<byte[]> ExportAsync(CancellationToken stop = default)
    {
        using HttpRequestMessage request = Request(HttpMethod.Get, Plan + "/export", null);
        using HttpResponseMessage answer = await http.SendAsync(request, stop);
        await ThrowUnlessDone(answer, stop);
        return await answer.Content.ReadAsByteArrayAsync(stop);
    }

    /// <summary>Deletes plan, site book, links and audit from the server, for good; with the keeper key. What devices have stays on them.</summary>
    public Task DeleteEverythingAsync(CancellationToken stop = default) => SendAsync(HttpMethod.Delete, Plan, stop);

    private async Task SendAsync(HttpMethod method, string address, CancellationToken stop)
    {
        using HttpRequestMessage request = Request(method, address, null);
        using HttpResponseMessage answer = await http.SendAsync(request, stop);
        await ThrowUnlessDone(answer, stop);
    }

    private async Task<T> SendAsync<T>(HttpMethod method, string address, HttpContent? body, JsonTypeInfo<T> type, CancellationToken stop)
    {
        using HttpRequestMessage request = Request(method, address, body);
        try
        {
            using HttpResponseMessage answer = await http.SendAsync(request, stop);
            await ThrowUnlessDone(answer, stop);
            return await answer.Content.ReadFromJsonAsync(type, stop) ?? throw new HttpRequestException("The server's answer is empty.");
        }
        catch (JsonException fault)
        {
            // The page of a guest network that wants a sign-in first, say.
            throw new HttpRequestException("The server's answer cannot be read.", fault);
        }
        catch (OperationCanceledException fault) when (!stop.IsCancellationRequested)
        {
            throw new HttpRequestException("The server did not answer in time.", fault);
        }
    }

    private static PlanChange? ChangeIn(string text)
    {
        try
        {
            return JsonSerializer.Deserialize(text, SharingJson.Default.PlanChange);
        }
        catch (JsonException fault)
        {
            throw new HttpRequestException("The server's answer cannot be read.", fault);
        }
    }

    private HttpRequestMessage Request(HttpMethod method, string address, HttpContent? body)
    {
        HttpRequestMessage request = new(method, address) { Content = body };
        if (token.Length > 0) request.Headers.Authorization = new AuthenticationHeaderValue("Bearer", token);
        return request;
    }

    private static JsonContent Body<T>(T value, JsonTypeInfo<T> type) => JsonContent.Create(value, type);

    private static async Task ThrowUnlessDone(HttpResponseMessage answer, CancellationToken stop)
    {
        if (answer.IsSuccessStatusCode) return;
        // A proxy in between may answer with a page of its own: that is a server out of reach, not a refusal.
        if (answer.Content.Headers.ContentType?.MediaType != "application/problem+json")
            throw new HttpRequestException($"The server answered {(int)answer.StatusCode}.", null, answer.StatusCode);
        SharingProblem problem = await answer.Content.ReadFromJsonAsync(SharingJson.Default.SharingProblem, stop) ?? throw new HttpRequestException("The server's answer is empty.", null, answer.StatusCode);
        throw new SharingException(problem, answer.Headers.RetryAfter?.Delta);
    }
}
