// Loaded at its place in the page: controls that need scripts come out of their template before anything is shown.
const template = document.currentScript?.previousElementSibling
if (template instanceof HTMLTemplateElement) template.replaceWith(template.content)
