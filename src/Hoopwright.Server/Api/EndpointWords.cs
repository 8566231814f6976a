using Hoopwright.Sharing;

namespace Hoopwright.Server.Api;

/// <summary>What endpoints have in common in the OpenAPI document.</summary>
internal static class EndpointWords
{
    /// <summary>The refusals that an endpoint gives.</summary>
    public static RouteHandlerBuilder Refuses(this RouteHandlerBuilder endpoint, params ReadOnlySpan<int> statuses)
    {
        foreach (int status in statuses) endpoint.Produces<SharingProblem>(status, Problems.ContentType);
        return endpoint;
    }

    /// <summary>Needs a link of at least this kind, and gives the refusals that go with it.</summary>
    public static RouteHandlerBuilder Needs(this RouteHandlerBuilder endpoint, LinkKind least) => LinkAuthentication.Needs(endpoint, least).Refuses(401, 403, 404, 429, 503);
}
