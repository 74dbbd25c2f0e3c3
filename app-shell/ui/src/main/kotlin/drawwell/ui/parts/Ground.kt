package drawwell.ui.parts

import androidx.compose.foundation.background
import androidx.compose.foundation.border
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.BoxScope
import androidx.compose.foundation.shape.RoundedCornerShape
import androidx.compose.runtime.Composable
import androidx.compose.runtime.CompositionLocalProvider
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.draw.clip
import androidx.compose.ui.graphics.RectangleShape
import androidx.compose.ui.graphics.Shape
import androidx.compose.ui.unit.Dp
import androidx.compose.ui.unit.dp
import drawwell.ui.look.LocalColours
import drawwell.ui.look.LocalTone
import drawwell.ui.look.Measures
import drawwell.ui.look.Tone

internal val Rounded = RoundedCornerShape(Measures.round)

/** A piece of ground; all that stands on it takes its ink. */
@Composable
internal fun Ground(
    tone: Tone,
    modifier: Modifier = Modifier,
    shape: Shape = RectangleShape,
    edged: Boolean = false,
    pen: Dp = 1.dp,
    align: Alignment = Alignment.TopStart,
    content: @Composable BoxScope.() -> Unit,
) {
    val raised = shape != RectangleShape && tone.ground != LocalTone.current.ground
    val edge = if (edged || raised && LocalColours.current.outlined) Modifier.border(pen, tone.edge, shape) else Modifier
    CompositionLocalProvider(LocalTone provides tone) {
        Box(modifier.clip(shape).background(tone.ground).then(edge), contentAlignment = align, content = content)
    }
}
