using System.Security.Claims;
using System.Text.Encodings.Web;
using Hoopwright.Server.Storage;
using Hoopwright.Sharing;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authorization;
using Microsoft.Extensions.Options;
using Microsoft.Net.Http.Headers;

namespace Hoopwright.Server.Api;

/// <summary>
/// A request is let in by the token of a link, in the Authorization header; which plan it is about follows from the token alone, so no request can name
/// another plan. Unknown, revoked and misshapen tokens take the same steps and get the same answer.
/// </summary>
internal sealed class LinkAuthentication(IOptionsMonitor<AuthenticationSchemeOptions> options, ILoggerFactory log, UrlEncoder encoder, ShareStore store)
    : AuthenticationHandler<AuthenticationSchemeOptions>(options, log, encoder)
{
    public const string SchemeName = "Link";
    private const string Prefix = "Bearer ";

    /// <summary>The token of a request; none where it has none.</summary>
    public static string? TokenOf(HttpRequest request) =>
        request.Headers.Authorization.ToString() is { } header && header.StartsWith(Prefix, StringComparison.OrdinalIgnoreCase) ? header[Prefix.Length..].Trim() : null;

    /// <summary>Lets in whoever has a link of this kind or one that allows more.</summary>
    public static TBuilder Needs<TBuilder>(TBuilder endpoints, LinkKind least) where TBuilder : IEndpointConventionBuilder =>
        endpoints.RequireAuthorization(new AuthorizationPolicyBuilder(SchemeName).RequireAssertion(context => context.User.Identity is LinkIdentity link && link.Access.Kind >= least).Build());

    protected override async Task<AuthenticateResult> HandleAuthenticateAsync()
    {
        if (TokenOf(Request) is not { } token) return AuthenticateResult.NoResult();
        return await store.FindAsync(token) is { } access
            ? AuthenticateResult.Success(new AuthenticationTicket(new ClaimsPrincipal(new LinkIdentity(access)), SchemeName))
            : AuthenticateResult.Fail("unknown");
    }

    protected override Task HandleChallengeAsync(AuthenticationProperties properties)
    {
        if (TokenOf(Request) is not null) return Problems.UnknownLink.WriteAsync(Context);
        Response.Headers[HeaderNames.WWWAuthenticate] = "Bearer";
        return Problems.NoLink.WriteAsync(Context);
    }

    protected override Task HandleForbiddenAsync(AuthenticationProperties properties) => Problems.NotAllowed.WriteAsync(Context);
}
