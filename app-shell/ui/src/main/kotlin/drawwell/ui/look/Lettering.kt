package drawwell.ui.look

import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.text.font.FontFamily
import androidx.compose.ui.text.font.FontWeight
import androidx.compose.ui.unit.TextUnit
import androidx.compose.ui.unit.sp

/** The sizes that words come in. Figures stand in columns, so they are all of one width. */
class Lettering(letters: FontFamily) {
    private val base = TextStyle(fontFamily = letters, fontFeatureSettings = "tnum")

    /** The one large thing on a screen. */
    val figure = base.sized(88.sp, 78.sp, FontWeight.Bold).copy(letterSpacing = (-2).sp)

    /** A time of day that is read in the dark, from where one lies. */
    val hour = base.sized(124.sp, 108.sp, FontWeight.Bold).copy(letterSpacing = (-3).sp)

    /** The one large thing where it is a word. */
    val word = base.sized(64.sp, 64.sp, FontWeight.Bold).copy(letterSpacing = (-1.5).sp)

    /** An amount at the head of its column. */
    val amount = base.sized(40.sp, 44.sp, FontWeight.Bold).copy(letterSpacing = (-0.5).sp)
    /** Several words that two people read to each other: as many as there may be light no room. */
    val words = base.sized(34.sp, 42.sp, FontWeight.SemiBold).copy(letterSpacing = (-0.3).sp)
    val headline = base.sized(28.sp, 34.sp, FontWeight.SemiBold)
    val title = base.sized(20.sp, 26.sp, FontWeight.SemiBold)
    val action = base.sized(18.sp, 22.sp, FontWeight.SemiBold)

    /** On an action that is one of four in a row. */
    val small = base.sized(15.sp, 20.sp, FontWeight.SemiBold)
    val mainAction = base.sized(23.sp, 28.sp, FontWeight.SemiBold)
    val value = base.sized(26.sp, 30.sp, FontWeight.SemiBold)
    val body = base.sized(17.sp, 24.sp, FontWeight.Normal)
    val caption = base.sized(18.sp, 24.sp, FontWeight.Medium)
    val label = base.sized(15.sp, 20.sp, FontWeight.Medium)
    val tick = base.sized(13.sp, 16.sp, FontWeight.Medium)

    private fun TextStyle.sized(size: TextUnit, line: TextUnit, weight: FontWeight) =
        copy(fontSize = size, lineHeight = line, fontWeight = weight)
}
