using Arraywright.Limits;

namespace Arraywright.Page.Compute;

/// <summary>The letters to the makers.</summary>
internal static class AskSheet
{
    /// <summary>A letter an input, with where its answer goes; or why there is none.</summary>
    public static Sheet Of(AskResult result)
    {
        if (result.Letters.IsEmpty)
        {
            return new Sheet("", [Block.Of(BlockKind.Paragraph, result.Result.Verdict == Level.Stop ? MakerLetter.NoAnswerHelps : MakerLetter.NothingToAsk)]);
        }

        List<Block> blocks = [];
        if (result.Result.Verdict == Level.Stop)
        {
            blocks.Add(Block.Of(BlockKind.Paragraph, "The verdict is stop, and these answers do not clear what stops it."));
        }

        foreach (InputLetter letter in result.Letters)
        {
            blocks.Add(Block.Of(BlockKind.Heading, letter.Input));
            blocks.Add(Block.Of(BlockKind.Text, letter.Text));
            blocks.Add(Block.Of(BlockKind.Text, letter.WhereTheAnswerGoes));
        }

        return new Sheet("", blocks) { Files = [new SheetFile("letter.txt", "text/plain", string.Join($"\n{new string('=', 76)}\n\n", result.Letters.Select(letter => letter.Text)))] };
    }
}
