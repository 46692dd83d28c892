using TyingClass.Storage.Classes;

namespace TyingClass.Web.Identity;

/// <summary>What somebody without an account is told: what is theirs here and what is not.</summary>
public sealed class GuestWords(Visitor visitor, ClassRoomStore classes)
{
    private readonly Lazy<bool> _hasClass = new(() => classes.All().Length > 0);

    /// <summary>Somebody has opened a class on this server: there is something to join.</summary>
    public bool HasClass => _hasClass.Value;

    /// <summary>Who reads what no engine can mark.</summary>
    public string WhoReads => visitor.HasAccount ? "A mentor or the instructor reads this; other students do not."
        : HasClass ? "As you are a guest, nobody reads this: once you send it, the model answer opens beside it. In a class your mentor reads it."
        : "There is no class on this server, so nobody reads this: once you send it, the model answer opens beside it for you to compare.";

    /// <summary>After it was sent in.</summary>
    /// <param name="hasModelAnswer">There is an answer of the author's to hold it against.</param>
    public string WhoWillRead(bool hasModelAnswer) => visitor.HasAccount ? "A person will read this one: your mentor or instructor."
        : HasClass ? "It is kept in this browser. When you join a class it comes along, and your mentor can read it."
        : hasModelAnswer ? "It is kept in this browser for you. Nobody marks it here: hold it against the model answer below."
        : "It is kept in this browser for you. Nobody marks it here: what you saw stands beside what is computed.";

    /// <summary>What a guest gets.</summary>
    public string WhatAGuestGets => "As a guest you get all of it: lessons, exercises with their feedback, practice and the bench. Your answers are kept in "
        + "this browser only.";
}
