namespace SpanRater.Files;

/// <summary>Says where a fault in a truss stands in its tables, what it is, and the mend.</summary>
internal sealed class TrussFaultWording(JointsTable joints, MembersTable members)
{
    public (Place Where, string What) Of(TrussFault fault) => fault switch
    {
        TrussFault.NoJoints => (new Place(BridgeFolder.JointsFile), "has no joint: write one row a joint."),
        TrussFault.NoMembers => (new Place(BridgeFolder.MembersFile), "has no member: write one row a member."),
        TrussFault.NoSupport => (new Place(BridgeFolder.JointsFile), "no joint is supported: write pin at one end and roller at the other under support."),
        TrussFault.DuplicateJoint f => (Joint(f.Joint), $"joint \"{J(f.Joint)}\" is on line {joints.LineOf(f.First)} already: give this one another name, or remove it."),
        TrussFault.CoincidentJoints f => (joints.PlaceOf(f.Joint, "x"), $"joint \"{J(f.Joint)}\" stands at the same point as \"{J(f.First)}\" (line {joints.LineOf(f.First)}): check x and y, or make them one joint."),
        TrussFault.LooseJoint f => (Joint(f.Joint), $"nothing holds joint \"{J(f.Joint)}\": no member ends there. Add its members, or remove it."),
        TrussFault.DuplicateMember f => (Member(f.Member), $"member \"{M(f.Member)}\" is on line {members.LineOf(f.First)} already: give this one another name, or remove it."),
        TrussFault.UnknownJoint f => (members.PlaceOf(f.Member, f.AtFrom ? "from" : "to"), $"member \"{M(f.Member)}\" names joint \"{f.Name}\", which joints.csv does not have.{NearestName.Question(f.Name, joints.Names)}"),
        TrussFault.NoLength f => (members.PlaceOf(f.Member, "to"), $"member \"{M(f.Member)}\" starts and ends at joint \"{members.Members[f.Member].From}\": it has no length. Check from and to."),
        TrussFault.JoinedTwice f => (Member(f.Member), $"member \"{M(f.Member)}\" joins the same two joints as \"{M(f.First)}\" (line {members.LineOf(f.First)}). Two bars side by side are entered as one member with both areas and capacities."),
        TrussFault.CrossingMembers f => (Member(f.Member), $"members \"{M(f.Member)}\" and \"{M(f.First)}\" (line {members.LineOf(f.First)}) cross without a joint. Right where they pass each other free, as a bar does beside a post, or two rods that only pull and are marked so; where they are fastened, add a joint."),
        TrussFault.PassesJoint f => (Member(f.Member), $"member \"{M(f.Member)}\" runs past joint \"{J(f.Joint)}\" without ending there. If they are fastened, split it into two members."),
        TrussFault.LoadBetweenJoints f => (joints.PlaceOf(f.Joint, "deck"), $"panel point \"{J(f.Joint)}\" lies on member \"{M(f.Member)}\" between its ends: the deck's load bends the member, and pin-joint forces alone are not enough. Split the member at the joint if it is jointed there."),
        TrussFault.PanelPointsAbove f => (joints.PlaceOf(f.Joint, "deck"), $"panel points \"{J(f.First)}\" (line {joints.LineOf(f.First)}) and \"{J(f.Joint)}\" stand above one another: mark only the one that carries the deck."),
        TrussFault.PanelPointsOutOfOrder f => (joints.PlaceOf(f.Joint, "x"), $"panel point \"{J(f.Joint)}\" stands left of \"{J(f.Previous)}\", which is listed before it. Panel points are taken in order of x: check x."),
        TrussFault.DeckJointSkipped f => (Joint(f.Joint), $"the deck runs from \"{J(f.Left)}\" to \"{J(f.Right)}\" past joint \"{J(f.Joint)}\". If a floorbeam sits there, write deck = yes."),
        TrussFault.DeckEndsShort f => (Joint(f.Joint), $"the deck ends at \"{J(f.Nearest)}\", short of the support at \"{J(f.Joint)}\". If the deck reaches it, write deck = yes."),
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "Every kind of fault has a wording."),
    };

    /// <summary>Where many crossings begin, and what they are.</summary>
    public (Place Where, string What) OfMany(IReadOnlyList<TrussFault.CrossingMembers> crossings) => (
        Member(crossings[0].Member),
        $"{crossings.Count} pairs of members cross without a joint: {string.Join(", ", crossings.Select(c => $"{M(c.First)} and {M(c.Member)}"))}. Right for webs of two systems, whose bars pass each other free; where they are fastened, add a joint.");

    private string J(int joint) => joints.Joints[joint].Name;

    private string M(int member) => members.Members[member].Name;

    private Place Joint(int joint) => joints.PlaceOf(joint, "joint");

    private Place Member(int member) => members.PlaceOf(member, "member");
}
