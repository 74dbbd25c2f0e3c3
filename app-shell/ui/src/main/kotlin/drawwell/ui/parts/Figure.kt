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
    val grown = LocalDensity.current.fontScale.coerceAtLeast(1f)
    val style = large.copy(
        fontSize = large.fontSize / grown,
        lineHeight = large.lineHeight / grown,
        letterSpacing = large.letterSpacing / grown,
    )
    Column(
        modifier.fillMaxWidth().testTag("figure").semantics(mergeDescendants = true) {
            if (spoken.isNotEmpty()) contentDescription = spoken
        },
    ) {
        OneLine(figure, style, least = 20.sp / grown)
        Words(caption, lettering.caption, soft = true)
    }
}
