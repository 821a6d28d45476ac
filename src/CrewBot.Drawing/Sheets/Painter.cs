using System.Runtime.InteropServices;
using CrewBot.Drawing.Fonts;
using CrewBot.Drawing.Inks;
using SkiaSharp;

namespace CrewBot.Drawing.Sheets;

/// <summary>Paints a sheet.</summary>
internal static class Painter
{
    /// <summary>Paints it and packs it.</summary>
    /// <returns>A PNG file.</returns>
    public static byte[] Paint(Sheet sheet, Theme theme)
    {
        using var bitmap = new SKBitmap(new SKImageInfo((int)Sheet.Width, (int)Math.Ceiling(sheet.Height), SKColorType.Rgba8888, SKAlphaType.Opaque));
        using (var canvas = new SKCanvas(bitmap))
        {
            canvas.Clear(theme[Ink.Paper]);
            using var paint = new SKPaint { IsAntialias = true };
            foreach (var mark in sheet.Marks)
            {
                paint.Color = theme[mark.Ink];
                Paint(canvas, paint, mark);
            }
        }

        return IndexedPng.Pack(MemoryMarshal.Cast<byte, uint>(bitmap.GetPixelSpan()), bitmap.Width, bitmap.Height);
    }

    private static void Paint(SKCanvas canvas, SKPaint paint, Mark mark)
    {
        switch (mark)
        {
            case TextMark text:
                using (var font = Lettering.Font(text.Size, text.Weight))
                {
                    paint.Style = SKPaintStyle.Fill;
                    canvas.DrawText(text.Text, text.Box.Left, text.Box.Top + (text.Size * Lettering.Ascent), SKTextAlign.Left, font, paint);
                }

                break;
            case FillMark fill:
                paint.Style = SKPaintStyle.Fill;
                canvas.DrawRoundRect(new SKRect(fill.Box.Left, fill.Box.Top, fill.Box.Right, fill.Box.Bottom), fill.Radius, fill.Radius, paint);
                break;
            case StrokeMark stroke:
                Paint(canvas, paint, stroke);
                break;
            case ShapeMark shape:
                Paint(canvas, paint, shape);
                break;
        }
    }

    private static void Paint(SKCanvas canvas, SKPaint paint, StrokeMark stroke)
    {
        paint.Style = SKPaintStyle.Stroke;
        paint.StrokeWidth = stroke.Width;
        paint.StrokeCap = SKStrokeCap.Round;
        paint.StrokeJoin = SKStrokeJoin.Round;
        using var dashes = stroke.Dashes is { } pattern ? SKPathEffect.CreateDash([pattern.Dash, pattern.Gap], 0) : null;
        paint.PathEffect = dashes;
        canvas.DrawPoints(SKPointMode.Polygon, [.. stroke.Points.Select(point => new SKPoint(point.X, point.Y))], paint);
        paint.PathEffect = null;
    }

    private static void Paint(SKCanvas canvas, SKPaint paint, ShapeMark shape)
    {
        using var path = SKPath.ParseSvgPathData(shape.Path);
        canvas.Save();
        canvas.Translate(shape.X, shape.Y);
        canvas.Scale(shape.Scale);
        paint.Style = shape.Outline is null ? SKPaintStyle.Fill : SKPaintStyle.Stroke;
        paint.StrokeWidth = (shape.Outline ?? 0) / shape.Scale;
        paint.StrokeCap = SKStrokeCap.Round;
        paint.StrokeJoin = SKStrokeJoin.Round;
        canvas.DrawPath(path, paint);
        canvas.Restore();
    }
}
