package drawwell.ui.parts

import androidx.compose.foundation.clickable
import androidx.compose.foundation.interaction.MutableInteractionSource
import androidx.compose.foundation.interaction.collectIsPressedAsState
import androidx.compose.foundation.layout.defaultMinSize
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.remember
import androidx.compose.ui.Modifier
import androidx.compose.ui.draw.drawWithContent
import androidx.compose.ui.geometry.CornerRadius
import androidx.compose.ui.graphics.Color
import androidx.compose.ui.graphics.drawscope.Stroke
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.Role
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.selected
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import drawwell.surface.Action
import drawwell.surface.Event
import drawwell.ui.look.Measures

/** Makes a thing answer to the thumb, the keyboard and the voice as this action, and name itself so. */
@Composable
internal fun Modifier.touch(action: Action, ink: Color, send: (Event) -> Unit, oneOf: Boolean = false): Modifier {
    val source = remember { MutableInteractionSource() }
    val pressed by source.collectIsPressedAsState()
    val focused by source.keyboardFocus()
    return this
        .defaultMinSize(Measures.target, Measures.target)
        .testTag(action.key)
        .semantics(mergeDescendants = true) {
            contentDescription = action.spoken.ifEmpty { action.label }
            if (oneOf) selected = action.chosen
        }
        .clickable(
            interactionSource = source,
            indication = null,
            enabled = action.open,
            role = if (oneOf) Role.RadioButton else Role.Button,
        ) { send(action.event) }
        .drawWithContent {
            drawContent()
            val corner = CornerRadius(Measures.round.toPx())
            if (pressed) drawRoundRect(ink, alpha = PRESSED, cornerRadius = corner)
            if (focused) drawRoundRect(ink, cornerRadius = corner, style = Stroke(3.dp.toPx()))
        }
}

/** How much ink a pressed thing takes on. */
private const val PRESSED = 0.14f
