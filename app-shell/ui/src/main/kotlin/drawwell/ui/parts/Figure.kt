package drawwell.ui.parts

import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.LocalDensity
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.unit.TextUnit
import androidx.compose.ui.unit.dp
import androidx.compose.ui.unit.sp
import drawwell.ui.look.LocalLettering

/** The one large thing, and what it is. It is large already, so it does not grow with the type. */
@Composable
internal fun Figure(
    figure: String,
    caption: String,
    spoken: String,
    modifier: Modifier = Modifier,
    large: TextStyle = LocalLettering.current.figure,
) {
    val lettering = LocalLettering.current
    val density = LocalDensity.current
    // Through dp and not by a division: a phone lets large type grow less than small.
    fun TextUnit.ungrown() = if (density.fontScale <= 1f) this else with(density) { value.dp.toSp() }
    val style = large.copy(fontSize = large.fontSize.ungrown(), lineHeight = large.lineHeight.ungrown(), letterSpacing = large.letterSpacing.ungrown())
    Column(
        modifier.fillMaxWidth().testTag("figure").semantics(mergeDescendants = true) {
            if (spoken.isNotEmpty()) contentDescription = spoken
        },
    ) {
        OneLine(figure, style, least = 20.sp.ungrown())
        Words(caption, lettering.caption, soft = true)
    }
}
