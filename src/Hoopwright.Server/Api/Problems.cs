using Hoopwright.Server.Storage;
using Hoopwright.Sharing;

namespace Hoopwright.Server.Api;

/// <summary>Every refusal that the API gives, in one place: what a program can rely on and what a person can do about it.</summary>
internal static class Problems
{
    public const string ContentType = "application/problem+json";

    public static SharingProblem NoLink { get; } = new("A link is needed", 401, "Send the secret part of a link in the header Authorization: Bearer.", "link-missing");

    // One answer for all of them: whoever tries links learns nothing from it.
    public static SharingProblem UnknownLink { get; } = new("The link opens nothing", 404, "The link was revoked, its plan was deleted, or it was not copied whole. Ask for a new one; what is on this device stays.", "link-unknown");

    public static SharingProblem NotAllowed { get; } = new("The link does not allow this", 403, "This link allows less. Ask whoever shared the plan for a link that allows it.", "link-too-weak");

    public static SharingProblem NotThere { get; } = new("There is no such thing", 404, "Nothing is at this address.", "not-found");

    public static SharingProblem TooManyRequests { get; } = new("Too many requests", 429, "That was too much at once. Wait as long as Retry-After says and try again; nothing that was confirmed is lost.", "too-many-requests");

    public static SharingProblem TooManyLinks { get; } = new("Too many links", 409, $"A plan has at most {SharingLimits.LinksPerPlan} links, revoked ones among them. Export the plan and share it anew.", "too-many-links");

    public static SharingProblem OurFault { get; } = new("The server made a mistake", 500, "This is a fault of the program; please report it. Nothing that was confirmed is lost.", "internal");

    public static SharingProblem WrongMethod { get; } = new("Not done that way", 405, "This address does not take requests of this method.", "wrong-method");

    public static SharingProblem NotJson { get; } = new("Not JSON", 415, "Send JSON, with the header Content-Type: application/json.", "not-json");

    public static SharingProblem BodyTooLarge { get; } = TooLarge($"A request has at most {SharingLimits.BodyBytes >> 20} MiB. Send fewer entries at once; a plan that is larger by itself cannot be shared.");

    public static SharingProblem TooLarge(string what) => new("Too large", 413, what, "too-large");

    public static SharingProblem Malformed(string what) => new("Not understood", 400, what, "malformed");

    public static SharingProblem Of(StorageFault fault)
    {
        const string After = " Nothing that was confirmed is lost; what you just sent was not kept, so send it again later.";
        return fault switch
        {
            StorageFault.Full => new("The server's disk is full", 507, "The server has no room to keep this. Tell whoever runs it." + After, "storage-full"),
            StorageFault.ReadOnly => new("The server's disk may only be read", 503, "The server may not write to its disk. Tell whoever runs it." + After, "storage-read-only"),
            StorageFault.Unreachable => new("The server's database is out of reach", 503, "The server cannot use its database now. Try again in a minute." + After, "storage-unreachable"),
            StorageFault.Unusable => new("The server's database is damaged", 503, "The server cannot use its database. Tell whoever runs it to restore a backup." + After, "storage-unusable"),
        };
    }

    /// <summary>For an answer that the framework left without words.</summary>
    public static SharingProblem OfStatus(int status) => status switch
    {
        404 => NotThere,
        405 => WrongMethod,
        413 => BodyTooLarge,
        415 => NotJson,
        _ => Malformed("The request cannot be read.") with { Status = status },
    };

    /// <summary>As the answer of an endpoint.</summary>
    public static IResult Answer(this SharingProblem problem) => Results.Json(problem, SharingJson.Default.SharingProblem, ContentType, problem.Status);

    /// <summary>As the answer where there is no endpoint yet.</summary>
    public static Task WriteAsync(this SharingProblem problem, HttpContext context) => problem.Answer().ExecuteAsync(context);
}
