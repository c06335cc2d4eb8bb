using System.Text.Json;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>Writes equations of equilibrium for scripts.</summary>
/// <param name="worked">The solution they belong to.</param>
/// <param name="asked">The load.</param>
internal sealed class BalanceJson(WorkedSolution worked, LoadAsked asked)
{
    private readonly ForceNotation notation = asked.Notation(worked, DisplayUnits.Si);

    /// <summary>A force in kN, or as it is under a unit load.</summary>
    public double Force(double force) => (asked.UnitLoadAt is null ? force / 1000 : force) + 0.0;

    /// <summary>Names of joints.</summary>
    public void WriteJoints(Utf8JsonWriter json, string name, IReadOnlyList<int> joints)
    {
        json.WriteStartArray(name);
        foreach (int joint in joints)
        {
            json.WriteStringValue(worked.Truss.Joints[joint].Name);
        }

        json.WriteEndArray();
    }

    /// <summary>The equation's kind, body, text and terms.</summary>
    public void WriteEquation(Utf8JsonWriter json, Balance balance)
    {
        var lines = new EquationLines(worked, balance, worked.Forces, notation);
        json.WriteString("sum", balance.Kind switch
        {
            BalanceKind.Right => "right",
            BalanceKind.Up => "up",
            BalanceKind.Across => "across",
            _ => "moment",
        });
        WriteJoints(json, "joints", balance.Joints);
        json.WriteString("across", balance.Beside is { } beside ? worked.Names[beside] : null);
        if (balance.Kind == BalanceKind.Moment)
        {
            json.WriteStartObject("centre");
            json.WriteNumber("x", balance.X + 0.0);
            json.WriteNumber("y", balance.Y + 0.0);
            json.WriteEndObject();
        }

        json.WriteString("text", $"{lines.LeftSide()} = 0");
        json.WriteStartArray("terms");
        foreach ((string name, double coefficient, double value) in lines.Terms())
        {
            json.WriteStartObject();
            json.WriteString("name", name);
            json.WriteNumber("coefficient", coefficient + 0.0);
            json.WriteNumber("value", Force(value));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
