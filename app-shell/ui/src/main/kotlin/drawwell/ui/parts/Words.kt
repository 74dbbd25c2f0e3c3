package drawwell.ui.parts

import androidx.compose.foundation.text.BasicText
import androidx.compose.foundation.text.TextAutoSize
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.text.style.TextAlign
import androidx.compose.ui.text.style.TextOverflow
import androidx.compose.ui.unit.TextUnit
import androidx.compose.ui.unit.sp
import drawwell.ui.look.LocalTone

/** Words in the ink of the ground they stand on. Draws nothing where there is nothing to say. */
@Composable
internal fun Words(
    text: String,
    style: TextStyle,
    modifier: Modifier = Modifier,
    soft: Boolean = false,
    align: TextAlign = TextAlign.Unspecified,
) {
    if (text.isEmpty()) return
    val tone = LocalTone.current
    BasicText(text, modifier, style.copy(color = if (soft) tone.soft else tone.ink, textAlign = align))
}

/** Words that must stay on one line, and become smaller before they are cut. */
@Composable
internal fun OneLine(
    text: String,
    style: TextStyle,
    modifier: Modifier = Modifier,
    soft: Boolean = false,
    align: TextAlign = TextAlign.Unspecified,
    least: TextUnit = 13.sp,
) {
    if (text.isEmpty()) return
    val tone = LocalTone.current
    BasicText(
        text,
        modifier,
        style.copy(color = if (soft) tone.soft else tone.ink, textAlign = align),
        overflow = TextOverflow.Clip,
        softWrap = false,
        maxLines = 1,
        autoSize = TextAutoSize.StepBased(minFontSize = least, maxFontSize = style.fontSize, stepSize = 1.sp),
    )
}
