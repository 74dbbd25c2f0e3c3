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
import androidx.compose.ui.unit.Density
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
    val style = large.ungrown(density)
    Column(
        modifier.fillMaxWidth().testTag("figure").semantics(mergeDescendants = true) {
            if (spoken.isNotEmpty()) contentDescription = spoken
        },
    ) {
        OneLine(figure, style, least = 20.sp.ungrown(density))
        Words(caption, lettering.caption, soft = true)
    }
}

/** Several large words, such as those two people read to each other: they wrap, and grow as far as a long one has room. */
@Composable
internal fun LargeWords(words: String, modifier: Modifier = Modifier) {
    val density = LocalDensity.current
    val grown = density.fontScale.coerceIn(1f, MOST)
    val style = LocalLettering.current.words.ungrown(density)
    Words(words, style.copy(fontSize = style.fontSize * grown, lineHeight = style.lineHeight * grown), modifier)
}

/** How far large words grow. */
private const val MOST = 1.35f

private fun TextStyle.ungrown(density: Density) = copy(
    fontSize = fontSize.ungrown(density),
    lineHeight = lineHeight.ungrown(density),
    letterSpacing = letterSpacing.ungrown(density),
)

/** Through dp and not by a division: a phone lets large type grow less than small. */
private fun TextUnit.ungrown(density: Density) = if (density.fontScale <= 1f) this else with(density) { value.dp.toSp() }
