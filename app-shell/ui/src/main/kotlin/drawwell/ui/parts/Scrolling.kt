package drawwell.ui.parts

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.ColumnScope
import androidx.compose.foundation.layout.PaddingValues
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.rememberScrollState
import androidx.compose.foundation.verticalScroll
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.draw.drawWithContent
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Size
import androidx.compose.ui.graphics.Brush
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.unit.dp
import drawwell.ui.look.LocalTone
import drawwell.ui.look.Measures

/** What scrolls; it fades where it goes on. */
@Composable
internal fun Scrolling(modifier: Modifier, padding: PaddingValues, content: @Composable ColumnScope.() -> Unit) {
    Column(modifier.fillMaxWidth().testTag("scroll").scrolling().padding(padding), Arrangement.spacedBy(Measures.apart), content = content)
}

/** Lets it scroll, and fade where it goes on. */
@Composable
internal fun Modifier.scrolling(): Modifier {
    val state = rememberScrollState()
    val page = LocalTone.current.ground
    return drawWithContent {
        drawContent()
        if (state.canScrollForward) {
            val tall = FADE.toPx()
            val top = size.height - tall
            drawRect(Brush.verticalGradient(listOf(page.copy(alpha = 0f), page), top, size.height), Offset(0f, top), Size(size.width, tall))
        }
    }.verticalScroll(state)
}

private val FADE = 24.dp
